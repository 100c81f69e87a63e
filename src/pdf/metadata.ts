import { cleanText } from './pdf-text.ts';
import type { Conformance } from './open-pdf.ts';
import type { FileIdentity } from './file-identity.ts';

/** What a file says about itself, in its information dictionary and in XMP alike. */
export interface Metadata {
  readonly title: string;
  readonly author?: string;
  readonly subject?: string;
  readonly language: string;
  /** The program and its version. */
  readonly producer: string;
  /** The day that the document is of, as `2026-03-14`; absent where nothing says. */
  readonly date?: string;
  readonly identity: FileIdentity;
  readonly conformance: Conformance;
}

/** The information dictionary (ISO 32000-1, 14.3.3): the same words as in XMP. */
export function informationOf(metadata: Metadata): Readonly<Record<string, string>> {
  const { title, author, subject, producer, date } = metadata;
  const day = date === undefined ? undefined : pdfDate(date);
  const entries = {
    Title: title,
    Author: author,
    Subject: subject,
    Creator: producer,
    Producer: producer,
    CreationDate: day,
    ModDate: day,
  };
  return Object.fromEntries(
    Object.entries(entries).flatMap(([key, text]) =>
      text === undefined ? [] : [[key, cleanText(text)]],
    ),
  );
}

/** A day as a PDF date at midnight, Greenwich. Throws RangeError on what is no day. */
export function pdfDate(date: string): string {
  const match = /^(\d{4})-(\d\d)-(\d\d)$/u.exec(date);
  if (match === null) throw new RangeError(`${date} is no day such as 2026-03-14.`);
  return `D:${match.slice(1).join('')}000000Z`;
}

/** The XMP packet (ISO 16684-1) in UTF-8. */
export function xmpOf(metadata: Metadata): Uint8Array {
  const packet = `<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
${[dublinCore(metadata), basic(metadata), identifiers(metadata)].join('\n')}
</rdf:RDF>
</x:xmpmeta>
<?xpacket end="w"?>`;
  return new TextEncoder().encode(packet);
}

function description(prefix: string, namespace: string, content: string): string {
  return `<rdf:Description rdf:about="" xmlns:${prefix}="${namespace}">
${content}
</rdf:Description>`;
}

function dublinCore({ title, author, subject, language }: Metadata): string {
  const lines = [
    '<dc:format>application/pdf</dc:format>',
    `<dc:title>${alternatives(title)}</dc:title>`,
    ...(author === undefined
      ? []
      : [`<dc:creator><rdf:Seq>${item(author)}</rdf:Seq></dc:creator>`]),
    ...(subject === undefined
      ? []
      : [`<dc:description>${alternatives(subject)}</dc:description>`]),
    `<dc:language><rdf:Bag>${item(language)}</rdf:Bag></dc:language>`,
  ];
  return description('dc', 'http://purl.org/dc/elements/1.1/', lines.join('\n'));
}

function basic({ producer, date, identity }: Metadata): string {
  const moment = `${date}T00:00:00Z`;
  const dates =
    date === undefined
      ? []
      : ['CreateDate', 'ModifyDate', 'MetadataDate'].map(
          (name) => `<xmp:${name}>${moment}</xmp:${name}>`,
        );
  const tool = `<xmp:CreatorTool>${escape(producer)}</xmp:CreatorTool>`;
  const { documentId, instanceId } = identity;
  return [
    description('xmp', 'http://ns.adobe.com/xap/1.0/', [...dates, tool].join('\n')),
    description(
      'xmpMM',
      'http://ns.adobe.com/xap/1.0/mm/',
      `<xmpMM:DocumentID>${documentId}</xmpMM:DocumentID>
<xmpMM:InstanceID>${instanceId}</xmpMM:InstanceID>`,
    ),
    description(
      'pdf',
      'http://ns.adobe.com/pdf/1.3/',
      `<pdf:Producer>${escape(producer)}</pdf:Producer>`,
    ),
  ].join('\n');
}

/** Which standards the file keeps; PDF/A knows no `pdfuaid`, so its schema is described beside it (ISO 19005-3, 6.6.2.3). */
function identifiers({ conformance }: Metadata): string {
  const [part, level] = conformance === 'PDF/A-3a' ? ['3', 'A'] : ['1', 'B'];
  const archive = description(
    'pdfaid',
    'http://www.aiim.org/pdfa/ns/id/',
    `<pdfaid:part>${part}</pdfaid:part>
<pdfaid:conformance>${level}</pdfaid:conformance>`,
  );
  const access = description(
    'pdfuaid',
    'http://www.aiim.org/pdfua/ns/id/',
    '<pdfuaid:part>1</pdfuaid:part>',
  );
  return [archive, access, extensionSchema].join('\n');
}

const extensionSchema = `<rdf:Description rdf:about=""
 xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
 xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
 xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
<pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
<pdfaProperty:name>part</pdfaProperty:name>
<pdfaProperty:valueType>Integer</pdfaProperty:valueType>
<pdfaProperty:category>internal</pdfaProperty:category>
<pdfaProperty:description>Part of ISO 14289 to which the document conforms</pdfaProperty:description>
</rdf:li></rdf:Seq></pdfaSchema:property>
</rdf:li></rdf:Bag></pdfaExtension:schemas>
</rdf:Description>`;

const item = (text: string): string => `<rdf:li>${escape(text)}</rdf:li>`;

const alternatives = (text: string): string =>
  `<rdf:Alt><rdf:li xml:lang="x-default">${escape(text)}</rdf:li></rdf:Alt>`;

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '\r': '&#xD;',
};

function escape(text: string): string {
  return cleanText(text).replace(/[&<>\r]/gu, (letter) => entities[letter] ?? letter);
}
