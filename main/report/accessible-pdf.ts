import Pdf from 'pdfkit'
import type { ReportDocument } from '../../shared-logic/report/document'
import { firstFace } from './type'

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')

/**
 * Says 'PDF/UA-1' in the file's description. PDF/A wants every property from outside its own list declared, so the
 * declaration goes along. Source: ISO 14289-1 clause 5; ISO 19005-3 clause 6.6.2.3.
 */
const universalAccess = `
  <rdf:Description rdf:about="" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"><pdfuaid:part>1</pdfuaid:part></rdf:Description>
  <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
    <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
      <pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
      <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
      <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
      <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
        <pdfaProperty:name>part</pdfaProperty:name><pdfaProperty:valueType>Integer</pdfaProperty:valueType>
        <pdfaProperty:category>internal</pdfaProperty:category><pdfaProperty:description>Part of ISO 14289 the file follows</pdfaProperty:description>
      </rdf:li></rdf:Seq></pdfaSchema:property>
    </rdf:li></rdf:Bag></pdfaExtension:schemas>
  </rdf:Description>`

/** pdfkit writes titles and names into XML as they are; a '&' in a name would break the file's description. */
class DescribedPdf extends Pdf {
  override _addInfo(): void {
    const plain = this.info
    this.info = Object.fromEntries(Object.entries(plain).map(([key, value]: [string, unknown]) => [key, typeof value === 'string' ? escaped(value) : value]))
    super._addInfo()
    this.info = plain
  }
}

/** An empty, tagged PDF/A-3a and PDF/UA-1 for a report; its times are the report's own, so that the same report gives the same bytes. */
export const openPdf = ({ paper, language, title, surveyor, issuedAt, programVersion }: ReportDocument): PDFKit.PDFDocument => {
  const when = new Date(issuedAt)
  const program = `Bunkwright ${programVersion}`
  const pdf = new DescribedPdf({
    size: paper === 'A4' ? 'A4' : 'LETTER',
    margin: 0,
    subset: 'PDF/A-3a',
    pdfVersion: '1.7',
    tagged: true,
    lang: language,
    displayTitle: true,
    bufferPages: true,
    font: firstFace(),
    info: { Title: title, ...(surveyor.name !== '' && { Author: surveyor.name }), Producer: program, Creator: program, CreationDate: when, ModDate: when },
  })
  pdf.appendXML(universalAccess)
  return pdf
}

/** Puts the report itself into the file as data, for machines. */
export const attachData = (pdf: PDFKit.PDFDocument, document: ReportDocument): void => {
  const when = new Date(document.issuedAt)
  pdf.file(Buffer.from(`${JSON.stringify(document, undefined, 1)}\n`), {
    name: 'report.json', type: 'application/json', description: document.labels.data, relationship: 'Data', creationDate: when, modifiedDate: when,
  })
}
