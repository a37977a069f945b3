import { useWords } from '../parts/use-words'
import { Button } from 'react-aria-components'
import { rigGroups } from './fields'
import style from './form-sections.module.css'

const goTo = (groupId: string): void => {
  const heading = document.getElementById(`group-${groupId}`)
  heading?.scrollIntoView({ block: 'start' })
  heading?.focus({ preventScroll: true })
}

/** The parts of the form, to jump to; the hash belongs to the screens, so these are buttons. */
export const FormSections = () => {
  const { rig: words } = useWords().screens
  return (
    <nav className={style.sections} aria-label={words.sections}>
      <ul>
        {rigGroups.map(({ id }) => (
          <li key={id}><Button className={style.section ?? ''} onPress={() => goTo(id)}>{words.groups[id].title}</Button></li>
        ))}
      </ul>
    </nav>
  )
}
