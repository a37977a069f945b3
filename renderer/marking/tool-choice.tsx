import { useWords } from '../parts/use-words'
import style from './marking.module.css'
import { ToolIcon } from './tool-icon'
import { toolKeys, tools, type Tool } from './tools'

interface ToolChoiceProps {
  readonly tool: Tool
  readonly onTool: (tool: Tool) => void
}

/** The tools in a row, each drawn as what it draws, with its name and its key. */
export const ToolChoice = ({ tool, onTool }: ToolChoiceProps) => {
  const said = useWords().screens.marking.tools
  return (
    <div role="toolbar" aria-label={said.label} className={style.tools}>
      {tools.map((each) => (
        <button key={each} type="button" className={style.tool} aria-pressed={each === tool} aria-keyshortcuts={toolKeys[each].toUpperCase()} onClick={() => onTool(each)}>
          <ToolIcon tool={each} />
          <span>{said.names[each]}</span>
          <kbd aria-hidden="true">{toolKeys[each].toUpperCase()}</kbd>
        </button>
      ))}
    </div>
  )
}
