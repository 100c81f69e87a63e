import type { Expression, Symbol } from '../../equation/index.ts';
import type { MethodChoice } from '../redundants/choose-method.ts';
import type { SupportRow } from './given-steps.ts';
import type { Sense, UnknownRow } from './shared.ts';

/** Facts of supports as reactions and of determinacy. */
export type StaticsStep =
  | {
      readonly kind: 'release';
      readonly rows: readonly {
        readonly point: string;
        readonly type: SupportRow['type'];
        /** Of an inclined roller: where its reaction points, its angle to the axis and the way of its two parts. */
        readonly inclined?: {
          readonly toward: Expression;
          readonly angle: Expression;
          readonly x: Sense;
          readonly y: Sense;
        };
        readonly gives: readonly UnknownRow[];
      }[];
    }
  | {
      readonly kind: 'count';
      readonly unknowns: readonly Symbol[];
      readonly unknownCount: number;
      readonly hinges: readonly string[];
      readonly equationCount: number;
      readonly degree: number;
    }
  | {
      readonly kind: 'geometry-test';
      readonly rank: number;
      readonly equationCount: number;
      readonly redundants: number;
      readonly mechanisms: number;
      readonly condition: string;
      readonly isNearlyUnstable: boolean;
      /** How the geometry was seen to hold: x held by, and y and turning held by. */
      readonly alongX: readonly Symbol[];
      readonly acrossAndTurning: readonly Symbol[];
      /** True where a support holds against turning by itself. */
      readonly holdsTurning: boolean;
      readonly hinges: readonly string[];
    }
  | {
      readonly kind: 'method';
      readonly axialOnly: boolean;
      readonly hinges: readonly string[];
      /** Of an indeterminate member: the hand method for its redundants and why it was chosen. */
      readonly redundants?: {
        readonly count: number;
        /** Further redundants, along the member, which bend nothing. */
        readonly along: number;
        readonly method: MethodChoice['method'];
        readonly why: MethodChoice['why'];
        readonly assumesConstantStiffness: boolean;
      };
    };
