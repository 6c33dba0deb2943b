/** Measured bands are nominal ones, ascend, and have a value each. */
import { THIRD_OCTAVES_HZ } from '#src/acoustics/standards/iec-61260.ts';
import { type Problem, problemAt } from '../problem.ts';
import { asList, type Entry, entriesOf, isNumber, own, type RawObject } from './raw.ts';

export function checkMeasured(notebook: RawObject): readonly Problem[] {
  return entriesOf(notebook, 'cells')
    .flatMap(({ item, path }) => entriesOf(item, 'measured', path))
    .flatMap((measured) => [...bandProblems(measured), ...lengthProblems(measured)]);
}

function bandProblems({ item, path }: Entry): readonly Problem[] {
  let last_Hz = 0;
  return asList(own(item, 'bands_Hz')).flatMap((band_Hz, i) => {
    if (!isNumber(band_Hz) || band_Hz < THIRD_OCTAVES_HZ[0]! || band_Hz > THIRD_OCTAVES_HZ.at(-1)!) return [];
    const place = [...path, 'bands_Hz', i];
    if (!THIRD_OCTAVES_HZ.includes(band_Hz))
      return [problemAt(place, 'a nominal mid-band frequency of IEC 61260-1', String(band_Hz))];
    if (band_Hz <= last_Hz) return [problemAt(place, `more than ${last_Hz}, since bands ascend`, String(band_Hz))];
    last_Hz = band_Hz;
    return [];
  });
}

function lengthProblems({ item, path }: Entry): readonly Problem[] {
  const bands = own(item, 'bands_Hz');
  const values = own(item, 'values_dB');
  if (!Array.isArray(bands) || !Array.isArray(values) || bands.length === values.length) return [];
  return [problemAt([...path, 'values_dB'], `${bands.length} long, like bands_Hz`, String(values.length))];
}
