import type { PhoneState } from '../../shared-logic/phone/phone-state'
import { Button } from '../parts/button'
import { SelectField } from '../parts/select-field'
import { useWords } from '../parts/use-words'
import style from './phone-panel.module.css'
import { QrCode } from './qr-code'
import { fill } from './say-door'

interface CodeViewProps {
  readonly state: PhoneState
  readonly onNetwork: (address: string) => void
  readonly onNewCode: () => void
}

/** The address without scheme, port and an IPv6 address's brackets, as networks are chosen by. */
const hostOf = (address: string): string => (URL.parse(address)?.hostname ?? address).replaceAll(/[[\]]/g, '')

/** The open door before a phone has come: the code, three steps, and what to beware of. */
export const CodeView = ({ state, onNetwork, onNewCode }: CodeViewProps) => {
  const said = useWords().screens.phone.panel
  const { pairingAddress, address, isSecure, certificateFingerprint, otherAddresses } = state
  const here = hostOf(address)
  // One address may stand on two interfaces.
  const others = otherAddresses.filter((other, index) => other.address !== here && otherAddresses.findIndex((each) => each.address === other.address) === index)
  return (
    <div className={style.board}>
      {pairingAddress === undefined
        ? <div className={style.noCode}><p>{said.codeGone}</p><Button onPress={onNewCode}>{said.newCode}</Button></div>
        : <QrCode text={pairingAddress} label={said.code} />}
      <div className={style.words}>
        <ol aria-label={said.stepsTitle} className={style.steps}>{said.steps.map((step) => <li key={step}>{step}</li>)}</ol>
        <dl className={style.addresses}>
          <dt>{said.address}</dt>
          <dd><span className={style.address}>{address}</span><span className={style.soft}>{said.addressHint}</span></dd>
          {certificateFingerprint !== undefined && (
            <>
              <dt>{said.fingerprint}</dt>
              <dd><span className={style.fingerprint}>{certificateFingerprint}</span><span className={style.soft}>{said.fingerprintHint}</span></dd>
            </>
          )}
        </dl>
        {others.length > 0 && (
          <SelectField
            label={said.network} value={here} onChange={(chosen) => { if (chosen !== here) onNetwork(chosen) }}
            options={[{ value: here, label: fill(said.networkNow, { address: here }) }, ...others.map((other) => ({ value: other.address, label: fill(said.networkOption, { ...other }) }))]}
          />
        )}
        <p className={style.caution}>{isSecure ? said.encryptHint : said.cautions.plain}</p>
      </div>
    </div>
  )
}
