/** The schema library tries `new Function` unless told not to; the content policy of the pages forbids it and reports the try. */
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });
