import { Page } from '../parts/page'

export const RigPage = ({ rigId }: { readonly rigId: string }) => <Page title="RigPage"><p>{rigId}</p></Page>
