import type { FastifyHelmetOptions } from '@fastify/helmet';

/**
 * Everything comes from this server, no script stands in a page, nobody frames it. HTTPS is not demanded here: whoever puts
 * it in front adds that (docs/server.md).
 */
export const SECURITY_HEADERS: FastifyHelmetOptions = {
  contentSecurityPolicy: {
    useDefaults: false,
    directives: {
      'default-src': ["'self'"],
      'img-src': ["'self'", 'data:'],
      'object-src': ["'none'"],
      'base-uri': ["'none'"],
      'form-action': ["'self'"],
      'frame-ancestors': ["'none'"],
    },
  },
  referrerPolicy: { policy: 'no-referrer' },
  frameguard: { action: 'deny' },
  strictTransportSecurity: false,
};
