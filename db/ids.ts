import { randomBytes } from 'node:crypto';

const letters = '0123456789abcdefghjkmnpqrstvwxyz';

/** A new opaque id of 20 letters and digits (100 random bits), typed by the branded schema it is made for. */
export function newId<T>(schema: { parse(value: unknown): T }): T {
  return schema.parse(Array.from(randomBytes(20), (byte) => letters[byte & 31]).join(''));
}
