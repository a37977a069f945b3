/** What the W3C's image capture adds to a camera's track, which the types of the DOM leave out. */
interface MediaTrackCapabilities {
  torch?: boolean
  zoom?: MediaSettingsRange
}

interface MediaTrackConstraintSet {
  torch?: ConstrainBoolean
  /** `true` asks for the ability, a number for a setting. */
  zoom?: boolean | ConstrainDouble
}

interface MediaTrackSettings {
  torch?: boolean
  zoom?: number
}
