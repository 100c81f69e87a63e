/** All went well. */
export const good: number = 0;
/** The user has something to mend; he has been told what. */
export const usersMistake: number = 1;
/** The program is at fault. */
export const ownFault: number = 2;
