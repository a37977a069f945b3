import { useState } from 'react'
import { ruleBooks, type RuleBook } from '../../shared-logic/rules/rule-book'
import { paperSchema, themeSchema, type Settings } from '../../shared-logic/survey/settings'
import { unitSystems } from '../../shared-logic/units/quantity'
import { say } from '../../shared-logic/words/say'
import { useQueryOf } from '../client/use-procedure'
import { ChoiceField } from '../parts/choice-field'
import { Page } from '../parts/page'
import { Waiting } from '../parts/progress'
import { RefusalNotice } from '../parts/refusal-notice'
import { TextField } from '../parts/text-field'
import { useWords } from '../parts/use-words'
import style from './settings-page.module.css'
import { SumsMargins } from './sums-margins'
import { useKeepSettings, type KeepSettings } from './use-keep-settings'

/** What goes with a rule book when it is chosen; both may be changed afterwards. */
const proposed: Readonly<Record<RuleBook, Pick<Settings, 'units' | 'paper'>>> = {
  us: { units: 'us', paper: 'Letter' },
  eu: { units: 'metric', paper: 'A4' },
}

interface PartProps {
  readonly settings: Settings
  readonly onChange: KeepSettings
}

const optionsOf = <Value extends string>(values: readonly Value[], labels: Readonly<Record<Value, string>>): { value: Value; label: string }[] => values.map((value) => ({ value, label: labels[value] }))

const Surveyor = ({ settings, onChange }: PartProps) => {
  const { fields, screens: { settings: words } } = useWords()
  const [typed, setTyped] = useState<Partial<Settings>>({})
  const keep = (): void => { if (Object.keys(typed).length > 0) onChange(typed) }
  return (
    <section className={style.part} aria-labelledby="part-surveyor">
      <div className={style.head}><h2 id="part-surveyor">{words.surveyor}</h2><p>{words.surveyorText}</p></div>
      <div className={style.fields}>
        <TextField label={fields['surveyorName'] ?? ''} name="surveyorName" value={typed.surveyorName ?? settings.surveyorName} maxLength={120} autoComplete="name" onChange={(surveyorName) => setTyped({ ...typed, surveyorName })} onBlur={keep} />
        <TextField label={fields['surveyorContact'] ?? ''} name="surveyorContact" value={typed.surveyorContact ?? settings.surveyorContact} maxLength={200} onChange={(surveyorContact) => setTyped({ ...typed, surveyorContact })} onBlur={keep} />
        <TextField label={fields['surveyorAddress'] ?? ''} name="surveyorAddress" value={typed.surveyorAddress ?? settings.surveyorAddress} maxLength={400} isLong autoComplete="street-address" onChange={(surveyorAddress) => setTyped({ ...typed, surveyorAddress })} onBlur={keep} />
      </div>
    </section>
  )
}

const Judging = ({ settings, onChange }: PartProps) => {
  const { fields, screens: { settings: words } } = useWords()
  return (
    <section className={style.part} aria-labelledby="part-judging">
      <div className={style.head}><h2 id="part-judging">{words.judging}</h2><p>{words.ruleBookText}</p></div>
      <div className={style.fields}>
        <ChoiceField label={fields['ruleBook'] ?? ''} options={optionsOf(ruleBooks, words.ruleBooks)} value={settings.ruleBook} onChange={(ruleBook) => onChange({ ruleBook, ...proposed[ruleBook] })} />
        <ChoiceField label={fields['units'] ?? ''} options={optionsOf(unitSystems, words.units)} value={settings.units} onChange={(units) => onChange({ units })} />
        <ChoiceField label={fields['paper'] ?? ''} options={optionsOf(paperSchema.options, words.papers)} value={settings.paper} onChange={(paper) => onChange({ paper })} />
      </div>
    </section>
  )
}

const Appearance = ({ settings, onChange }: PartProps) => {
  const { fields, screens: { settings: words } } = useWords()
  return (
    <section className={style.part} aria-labelledby="part-appearance">
      <div className={style.head}><h2 id="part-appearance">{words.appearance}</h2></div>
      <div className={style.fields}>
        <ChoiceField label={fields['theme'] ?? ''} options={optionsOf(themeSchema.options, words.themes)} value={settings.theme} onChange={(theme) => onChange({ theme })} />
      </div>
    </section>
  )
}

const YardFolder = () => {
  const { settings: words } = useWords().screens
  const about = useQueryOf('yard.about', {})
  return (
    <section className={style.part} aria-labelledby="part-yard">
      <div className={style.head}><h2 id="part-yard">{words.yard}</h2><p>{words.yardText}</p></div>
      <div className={style.fields}>
        <RefusalNotice error={about.error} />
        {about.data && (
          <>
            <p><code className={style.folder}>{about.data.folder}</code></p>
            <p>{say(words.holds, { rigs: about.data.rigCount, surveys: about.data.surveyCount }, 'metric')}</p>
            <p>{say(words.version, { version: about.data.version, catalogue: about.data.catalogueVersion }, 'metric')}</p>
          </>
        )}
      </div>
    </section>
  )
}

/** Settings of the yard; each change is kept at once. */
export const SettingsPage = () => {
  const { settings: words } = useWords().screens
  const kept = useQueryOf('settings.get', {})
  const { keep, saving } = useKeepSettings()
  return (
    <Page title={words.title} width="reading" crumbs={[{ label: words.title, to: '/settings' }]}>
      <output className={style.state}>{saving.isPending ? words.saving : saving.isSuccess ? words.saved : words.savedAtOnce}</output>
      <RefusalNotice error={saving.error ?? kept.error} />
      {kept.data ? (
        <>
          <Surveyor settings={kept.data.settings} onChange={keep} />
          <Judging settings={kept.data.settings} onChange={keep} />
          <SumsMargins key={kept.data.settings.ruleBook} settings={kept.data.settings} onChange={keep} />
          <Appearance settings={kept.data.settings} onChange={keep} />
        </>
      ) : !kept.error && <Waiting />}
      <YardFolder />
    </Page>
  )
}
