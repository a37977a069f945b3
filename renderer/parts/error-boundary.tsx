import { Component, type ReactNode } from 'react'
import { Page } from './page'
import { Button } from './button'
import { useWords } from './use-words'

interface ErrorBoundaryProps {
  /** Another screen is another try. */
  readonly location: string
  readonly children: ReactNode
}

interface ErrorBoundaryState {
  readonly error: Error | undefined
  readonly location: string
}

const Failed = ({ error, onRetry }: { readonly error: Error; readonly onRetry: () => void }) => {
  const { shell } = useWords().screens
  return (
    <Page title={shell.screenFailed} width="reading">
      <p>{shell.screenFailedHelp}</p>
      <p><code>{error.message}</code></p>
      <div><Button kind="primary" onPress={onRetry}>{shell.tryAgain}</Button></div>
    </Page>
  )
}

/** Catches a screen that fails while it is drawn: what was answered is in the yard already, and the way back stays open. */
export class ErrorBoundary extends Component<ErrorBoundaryProps, ErrorBoundaryState> {
  override state: ErrorBoundaryState = { error: undefined, location: this.props.location }

  static getDerivedStateFromError(error: unknown): Partial<ErrorBoundaryState> {
    return { error: error instanceof Error ? error : new Error(String(error)) }
  }

  static getDerivedStateFromProps(props: ErrorBoundaryProps, state: ErrorBoundaryState): ErrorBoundaryState | null {
    return props.location === state.location ? null : { error: undefined, location: props.location }
  }

  override render(): ReactNode {
    const { error } = this.state
    return error ? <Failed error={error} onRetry={() => this.setState({ error: undefined })} /> : this.props.children
  }
}
