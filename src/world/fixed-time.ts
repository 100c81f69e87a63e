/**
 * One time for all files that are kept: noon of 2 January 1980 by the clock of whatever zone the machine
 * stands in, so that a zip, which keeps local time without its zone, gets equal bytes everywhere. Noon,
 * because no zone skips it; the second day, because the format begins with the first and a zone may
 * still be in 1979 then.
 */
export function fixedTime(): Date {
  return new Date(1980, 0, 2, 12);
}
