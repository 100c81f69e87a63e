import type { Placed } from '../../shape/shape.ts';
import type { Named } from '../../shape/map-of.ts';
import type { LoadLine } from './load-line.ts';
import type {
  SectionEntry,
  SectionStretch,
  MaterialEntry,
} from '../../section-entry.ts';
import type { PointEntry } from './point-entry.ts';
import type { SupportEntry } from './support-entry.ts';
import { loadShape } from './load-shape.ts';
import { materialEntry, sectionEntry, sectionStretch } from '../../section-entry.ts';
import { pointEntry, pointName } from './point-entry.ts';
import { supportEntry } from './support-entry.ts';
import { caseMark, limitsMap, memberMark, type LimitEntry } from '../../names.ts';
import { byForm } from '../../shape/choice.ts';
import { listOf, oneOrMore } from '../../shape/list.ts';
import { mapOf } from '../../shape/map-of.ts';
import { numberFrom } from '../../shape/number.ts';
import { optional, optionalOr, required } from '../../shape/field.ts';
import { objectOf, type ObjectShape } from '../../shape/object.ts';
import { placed, turned, type Shape } from '../../shape/shape.ts';
import { oneOf, text } from '../../shape/text.ts';

/** Where a member is found. */
interface Whereabouts {
  readonly level?: string;
  readonly grid?: string;
  readonly drawing?: string;
}

/** How many members one stands for. */
interface Typical {
  readonly count: number;
  readonly note?: string;
}

/** What keeps a beam from moving sideways. */
interface Bracing {
  readonly top?: readonly Placed<string>[];
  readonly bottom?: readonly Placed<string>[];
}

/** A beam's file as written: every value of the right form, no name looked up yet. */
export interface BeamFile {
  readonly mark: Placed<string>;
  readonly kind: 'beam';
  readonly title?: string;
  readonly where?: Whereabouts;
  readonly typical?: Typical;
  readonly points: Placed<readonly Named<PointEntry>[]>;
  readonly supports: Placed<readonly Named<SupportEntry>[]>;
  readonly hinges: readonly Placed<string>[];
  readonly loads: readonly LoadLine[];
  readonly self_weight?: Placed<string>;
  readonly section?: Placed<SectionEntry>;
  readonly sections?: Placed<readonly SectionStretch[]>;
  readonly material?: Placed<MaterialEntry>;
  readonly deflection_limits?: readonly Named<LimitEntry>[];
  readonly bracing?: Bracing;
  readonly cautions: readonly string[];
  readonly uses: readonly Placed<string>[];
}

/** `continuous`, or the points where a flange is braced. */
const braced: Shape<readonly Placed<string>[]> = byForm({
  text: turned(placed(text), (one) => [one]),
  list: listOf(placed(text)),
});

/** `members/*.yaml` of `kind: beam`. */
export const beamFile: ObjectShape<BeamFile> = objectOf<BeamFile>(
  'a map of mark, kind, points and so on',
  {
    mark: required(placed(memberMark), 'the short name of the member, such as B1'),
    kind: required(oneOf('beam'), 'the kind of member'),
    title: optional(text, 'what the member is called'),
    where: optional(
      objectOf<Whereabouts>('a map of level, grid and drawing', {
        level: optional(text, 'the level that the member belongs to'),
        grid: optional(text, 'the grid lines between which it lies'),
        drawing: optional(text, 'the drawing that shows it'),
      }),
      'where the member is found',
    ),
    typical: optional(
      objectOf<Typical>('a map of count and note', {
        count: required(
          numberFrom({ from: 1, to: 100_000, whole: true }),
          'how many members are alike',
        ),
        note: optional(text, 'which ones'),
      }),
      'how many members this one stands for',
    ),
    points: required(
      placed(mapOf(pointName, pointEntry, 'a map of points and stations')),
      'named stations along the axis, left to right',
    ),
    supports: required(
      placed(mapOf(pointName, supportEntry, 'a map of points and supports')),
      'what holds the beam, by point',
    ),
    hinges: optionalOr(listOf(placed(pointName)), [], 'points with an internal hinge'),
    loads: optionalOr(listOf(loadShape), [], 'what the beam carries'),
    self_weight: optional(
      placed(caseMark),
      "the case that takes the beam's own weight, from the section's weight or its area and the material's density",
    ),
    section: optional(placed(sectionEntry), 'the cross-section, or its designation'),
    sections: optional(
      placed(listOf(sectionStretch, { atLeast: 1 })),
      'cross-sections by stretch, where they change',
    ),
    material: optional(placed(materialEntry), 'the material, or its name'),
    deflection_limits: optional(
      limitsMap,
      "limits that replace the project's for this member",
    ),
    bracing: optional(
      objectOf<Bracing>('a map of top and bottom', {
        top: optional(braced, '`continuous`, or the points where the top is braced'),
        bottom: optional(
          braced,
          '`continuous`, or the points where the bottom is braced',
        ),
      }),
      'what keeps the beam from moving sideways, printed as given',
    ),
    cautions: optionalOr(listOf(text), [], 'cautions for the sheet of this member'),
    uses: optionalOr(
      oneOrMore(placed(text)),
      [],
      'ids of assumptions and references that the member leans on',
    ),
  },
);
