import { Page } from '../parts/page'

export const YardPage = () => <Page title="Yard"><p /></Page>
