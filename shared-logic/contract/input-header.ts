/** Where a request's body is a file, this header holds its input, as encodeURIComponent(JSON). Apart from the schemas, for the phone's page is kept light. */
export const inputHeader = 'x-bunkwright-input'
