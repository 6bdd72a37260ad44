/** Version of the library, as the record states it; a test keeps it equal to the package's. */
export const VERSION = "0.1.0";
