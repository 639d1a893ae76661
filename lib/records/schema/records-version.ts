/** The version of the form of records that this program reads; each has its migration in `migrations/`. */
export const RECORDS_VERSION = 4;
