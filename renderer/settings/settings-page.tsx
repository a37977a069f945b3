import { Page } from '../parts/page'

export const SettingsPage = () => <Page title="Settings"><p /></Page>
