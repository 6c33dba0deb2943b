import type { Construction } from '#src/acoustics/construction.ts';
import { type StudiedNumber, studyNumbers } from '#src/acoustics/number-study.ts';
import type { Prediction, PredictOptions } from '#src/acoustics/prediction.ts';
import { type FieldValues, fieldValues } from '#src/acoustics/ratings/field-values.ts';
import { studiedNumbers } from '#src/notebook/studied-numbers.ts';
import { namedNumber } from './named-number.ts';
import { type SoundBelow, soundBelow } from './predict-below.ts';
import { type RoomModes, roomModes } from './predict-room-modes.ts';
import { type StackSensitivities, stackSensitivities } from './predict-sensitivities.ts';
import { type SimpleModel, simpleModels } from './predict-simple.ts';
import { type StackUncertainty, stackUncertainty } from './predict-uncertainty.ts';
import type { LevelSpectrum } from './read-levels.ts';
import type { RoomBelow } from './room-options.ts';

/** What is asked for besides the prediction itself. */
export interface PredictionWishes {
  readonly room?: RoomBelow | undefined;
  readonly lowestBand_Hz?: PredictOptions['lowestBand_Hz'];
  /** Levels in the room above; read with `room` only. */
  readonly source?: LevelSpectrum | undefined;
  /** Levels in the room below without the source; read with `source` only. */
  readonly background?: LevelSpectrum | undefined;
  readonly sensitivities?: boolean;
  readonly uncertainty?: boolean;
  readonly simple?: boolean;
  /** Over the reference scenario of a notebook. */
  readonly gains?: boolean;
}

/** Only what was asked for is present. */
export interface StackExtras {
  /** Where a room is given, or bands below 50 Hz. */
  readonly roomModes?: RoomModes;
  /** As measured above the room that was asked for. */
  readonly field?: FieldValues;
  readonly soundBelow?: SoundBelow;
  readonly sensitivities?: StackSensitivities;
  readonly uncertainty?: StackUncertainty;
  readonly simple?: readonly SimpleModel[];
}

/** @param layerNames One for each layer of the construction. */
export function extras(
  construction: Construction,
  layerNames: readonly string[],
  prediction: Prediction,
  { room, source, background, lowestBand_Hz = 50, ...wishes }: PredictionWishes,
): StackExtras {
  const { bands_Hz } = prediction;
  const study =
    wishes.sensitivities || wishes.uncertainty
      ? studyNumbers(construction, studiedNumbers(construction), { lowestBand_Hz })
      : undefined;
  const named = (number: StudiedNumber) => namedNumber(construction, layerNames, number);
  return {
    ...((room || lowestBand_Hz < 50) && { roomModes: roomModes(construction, bands_Hz, room) }),
    ...(room && { field: inBuilding(construction, prediction, room) }),
    ...(room && source && { soundBelow: soundBelow(construction, prediction, { room, source, background }) }),
    ...(study && wishes.sensitivities && { sensitivities: stackSensitivities(study, named) }),
    ...(study && wishes.uncertainty && { uncertainty: stackUncertainty(study, named) }),
    ...(wishes.simple && { simple: simpleModels(construction, prediction) }),
  };
}

function inBuilding({ length_m, width_m }: Construction, prediction: Prediction, room: RoomBelow): FieldValues {
  return fieldValues(prediction, { partitionArea_m2: length_m * width_m, ...room });
}
