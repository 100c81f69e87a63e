// The storeys of the house, ground first: a room may enter only rooms on a storey below its own.
// The import lint, the house tests and DEVELOPERS.md all read this one list.
module.exports = [
  ['diagnostics'],
  ['world', 'units', 'drawing'],
  ['font', 'equation', 'statics', 'theme', 'bag'],
  ['typeset', 'standards'],
  ['project', 'figure'],
  ['derivation', 'results'],
  ['review', 'comparison'],
  ['report'],
  ['layout', 'plain'],
  ['pdf'],
  ['pipeline'],
  ['archive'],
  ['index'],
  ['cli'],
];
