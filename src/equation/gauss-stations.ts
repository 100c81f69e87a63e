/**
 * Gauss's rule with five stations on −1 to 1 (Abramowitz and Stegun, Handbook of Mathematical Functions,
 * table 25.4, n = 5): exact up to the ninth power of the variable, which is more than any load here gives.
 */
export const gaussStations: readonly (readonly [place: number, weight: number])[] = [
  [-0.906179845938664, 0.236926885056189],
  [-0.538469310105683, 0.478628670499366],
  [0, 0.568888888888889],
  [0.538469310105683, 0.478628670499366],
  [0.906179845938664, 0.236926885056189],
];
