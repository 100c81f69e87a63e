import { schemaLine } from './schema-line.ts';
import type { Units } from './units.ts';

/** project.yaml of a new project. */
export function starterProject(units: Units): string {
  const standards = units === 'us' ? '"ASCE/SEI 7-22"' : '"EN 1990:2002+A1:2005"';
  return `${schemaLine('.schemas/project.json')}
# Who the package is for and how it is printed. Only project.title and units must be there; every
# default that was taken is listed in the package.
project:
  number: "0001"
  title: Potting shed
  client: Name of the client
  location: Where it will stand
  office: Name of your office
  stage: first draft
  status: preliminary          # then: for review, issued, superseded, void

# Initials print in a box only where that person's own date is given: date: 2031-03-14
people:
  prepared: { name: Your name, initials: YN }
  checked:  { name: Somebody else, initials: SE }

units: ${units}                      # what is printed, us or si; quantities in files may mix units
figures: 4                     # significant figures printed

criteria:
  standards: [ ${standards} ]

# What has been taken for granted. Members name what they lean on with \`uses\`.
assumptions:
  - id: A1
    text: Both bearings of a joist are free to turn.
    basis: detail to be drawn
    confirmed: false
`;
}
