import { z } from 'zod';

/** The number with which every document starts; a later form of the file gets the next one. */
export const formatSchema = z.literal(1, { error: '1' }).meta({ description: 'form of this file: always 1' });
