import { QueryClientProvider, type QueryClient } from '@tanstack/react-query'
import { lazy, Suspense, useEffect } from 'react'
import { Redirect, Route, Router, Switch, useLocation } from 'wouter'
import { hashLocation } from './client/hash-location'
import { ErrorBoundary } from './parts/error-boundary'
import { Waiting } from './parts/progress'
import { useSettings } from './parts/use-settings'
import { YardPage } from './yard/yard-page'

const RigPage = lazy(async () => ({ default: (await import('./rig/rig-page')).RigPage }))
const RigFormPage = lazy(async () => ({ default: (await import('./rig/rig-form-page')).RigFormPage }))
const SumsPage = lazy(async () => ({ default: (await import('./sums/sums-page')).SumsPage }))
const CorrosionPage = lazy(async () => ({ default: (await import('./corrosion/corrosion-page')).CorrosionPage }))
const SettingsPage = lazy(async () => ({ default: (await import('./settings/settings-page')).SettingsPage }))
const StartSurvey = lazy(async () => ({ default: (await import('./survey/start-survey')).StartSurvey }))
const SurveyWalk = lazy(async () => ({ default: (await import('./survey/survey-walk')).SurveyWalk }))
const ReviewPage = lazy(async () => ({ default: (await import('./review/review-page')).ReviewPage }))
const ContactSheetPage = lazy(async () => ({ default: (await import('./contact-sheet/contact-sheet-page')).ContactSheetPage }))
const ReportPage = lazy(async () => ({ default: (await import('./report-page/report-page')).ReportPage }))

const Screens = () => (
  <Switch>
    <Route path="/"><YardPage /></Route>
    <Route path="/rigs/new"><RigFormPage /></Route>
    <Route path="/rigs/:rigId/edit">{({ rigId }) => <RigFormPage key={rigId} rigId={rigId} />}</Route>
    <Route path="/rigs/:rigId/survey">{({ rigId }) => <StartSurvey key={rigId} rigId={rigId} />}</Route>
    <Route path="/rigs/:rigId/sums">{({ rigId }) => <SumsPage key={rigId} rigId={rigId} />}</Route>
    <Route path="/rigs/:rigId/corrosion">{({ rigId }) => <CorrosionPage key={rigId} rigId={rigId} />}</Route>
    <Route path="/rigs/:rigId">{({ rigId }) => <RigPage key={rigId} rigId={rigId} />}</Route>
    <Route path="/surveys/:surveyId/review">{({ surveyId }) => <ReviewPage key={surveyId} surveyId={surveyId} />}</Route>
    <Route path="/surveys/:surveyId/photographs">{({ surveyId }) => <ContactSheetPage key={surveyId} surveyId={surveyId} />}</Route>
    <Route path="/surveys/:surveyId/report">{({ surveyId }) => <ReportPage key={surveyId} surveyId={surveyId} />}</Route>
    <Route path="/surveys/:surveyId">{({ surveyId }) => <SurveyWalk key={surveyId} surveyId={surveyId} />}</Route>
    <Route path="/settings"><SettingsPage /></Route>
    <Route><Redirect to="/" replace /></Route>
  </Switch>
)

/** Day or night on the document's root; the system's own choice when none is made. */
const useTheme = (): void => {
  const { theme } = useSettings()
  useEffect(() => {
    if (theme === 'as the system') delete document.documentElement.dataset['theme']
    else document.documentElement.dataset['theme'] = theme
  }, [theme])
}

const Window = () => {
  useTheme()
  const [location] = useLocation()
  return (
    <ErrorBoundary location={location}>
      <Suspense fallback={<Waiting />}><Screens /></Suspense>
    </ErrorBoundary>
  )
}

interface AppProps {
  readonly client: QueryClient
}

/** The window's screens behind hash locations, which both doors can serve and reload. */
export const App = ({ client }: AppProps) => (
  <QueryClientProvider client={client}>
    <Router hook={hashLocation}><Window /></Router>
  </QueryClientProvider>
)
