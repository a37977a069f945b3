import { Page } from '../parts/page'

export const RigFormPage = ({ rigId }: { readonly rigId?: string }) => <Page title="RigFormPage"><p>{rigId}</p></Page>
