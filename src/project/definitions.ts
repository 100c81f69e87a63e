// What a checked folder is made of, in reading order.
export type {
  Project,
  MemberDefinition,
  DefinitionFile,
} from './definitions/project.ts';
export type {
  ProjectDefinition,
  PreferredMethods,
  Status,
  Person,
  Revision,
  Conventions,
  DesignLoad,
  Assumption,
  Reference,
  DeflectionLimit,
} from './definitions/project-definition.ts';
export type {
  LoadsDefinition,
  CaseKind,
  LoadCase,
  AreaLoad,
  CombinationRequest,
} from './definitions/loads-definition.ts';
export type {
  BeamDefinition,
  BeamPoint,
  BeamSupport,
} from './definitions/beam-definition.ts';
export type {
  BeamLoad,
  LoadFactor,
  LoadDirection,
  LoadOrigin,
  CarriedReaction,
} from './definitions/beam-load.ts';
export type { BeamTemperature } from './definitions/beam-temperature.ts';
export type { BeamTrain } from './definitions/beam-train.ts';
export type { CrossSection, Material } from './definitions/properties.ts';
export type { Stated } from './definitions/stated.ts';
export type { BeamPlace } from './definitions/beam-place.ts';
export type {
  WorkedDefinition,
  Worker,
  WorkedReply,
  WorkedSigns,
  WorkedStep,
  WorkedText,
} from './definitions/worked-definition.ts';
