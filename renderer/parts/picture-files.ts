/** What a choice of files offers: pictures, and HEIC by its endings, for not every system counts it among them. */
export const pictureFiles = 'image/*,.heic,.heif'
