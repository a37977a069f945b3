/** Starting and walking a survey, photographs, the review. */
export const surveyWords = {} as const
