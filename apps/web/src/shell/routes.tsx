import { createRootRoute, createRoute, createRouter, Outlet, useParams } from '@tanstack/react-router';
import { lazy, Suspense, type ReactNode } from 'react';
import { SHELL_WORDS } from '@fillwright/words/en';
import { Announcer } from './announcer.tsx';
import { PersonField } from './person-field.tsx';
import { ProductFrame } from './product-frame.tsx';

const StartPage = lazy(async () => ({ default: (await import('../pages/start/index.ts')).StartPage }));
const BriefPage = lazy(async () => ({ default: (await import('../pages/brief/index.ts')).BriefPage }));
const FilePage = lazy(async () => ({ default: (await import('../pages/brief/index.ts')).FilePage }));
const FillPage = lazy(async () => ({ default: (await import('../pages/fill/index.ts')).FillPage }));
const SheetPage = lazy(async () => ({ default: (await import('../pages/sheet/index.ts')).SheetPage }));
const ProductWeights = lazy(async () => ({
  default: (await import('../pages/weights/index.ts')).ProductWeightsPage,
}));
const FreeWeights = lazy(async () => ({ default: (await import('../pages/weights/index.ts')).FreeWeightsPage }));

function Root(): ReactNode {
  return (
    <>
      <Suspense fallback={null}>
        <Outlet />
      </Suspense>
      <Announcer />
    </>
  );
}

function NotFound(): ReactNode {
  return (
    <main>
      <p>
        {SHELL_WORDS.noSuchPage} <a href="/">{SHELL_WORDS.toStart}</a>
      </p>
    </main>
  );
}

const root = createRootRoute({ component: Root, notFoundComponent: NotFound });
const start = createRoute({ getParentRoute: () => root, path: '/', component: StartPage });
const brief = createRoute({
  getParentRoute: () => root,
  path: '/products/$id/brief',
  component: function Brief() {
    const { id } = useParams({ from: '/products/$id/brief' });
    return (
      <ProductFrame id={id} here="brief">
        <BriefPage />
      </ProductFrame>
    );
  },
});
const file = createRoute({
  getParentRoute: () => root,
  path: '/files/$kind/$id',
  component: function File() {
    const { kind, id } = useParams({ from: '/files/$kind/$id' });
    if (kind !== 'filler' && kind !== 'shell') return <NotFound />;
    return (
      <>
        <FilePage key={`${kind}/${id}`} document={{ kind, id }} />
        <PersonField />
      </>
    );
  },
});
const fill = createRoute({
  getParentRoute: () => root,
  path: '/products/$id/fill',
  component: function Fill() {
    const { id } = useParams({ from: '/products/$id/fill' });
    return (
      <ProductFrame id={id} here="fill">
        <FillPage />
      </ProductFrame>
    );
  },
});
const sheet = createRoute({
  getParentRoute: () => root,
  path: '/products/$id/sheet',
  component: function Sheet() {
    const { id } = useParams({ from: '/products/$id/sheet' });
    return (
      <ProductFrame id={id} here="fill">
        <SheetPage />
      </ProductFrame>
    );
  },
});
const weights = createRoute({
  getParentRoute: () => root,
  path: '/products/$id/weights',
  component: function Weights() {
    const { id } = useParams({ from: '/products/$id/weights' });
    return (
      <ProductFrame id={id} here="trial">
        <ProductWeights key={id} id={id} />
      </ProductFrame>
    );
  },
});
const freeWeights = createRoute({
  getParentRoute: () => root,
  path: '/weights',
  component: function Weights() {
    return (
      <>
        <FreeWeights />
        <PersonField />
      </>
    );
  },
});

/** Every address of the app. */
export const router = createRouter({
  routeTree: root.addChildren([start, brief, fill, sheet, weights, freeWeights, file]),
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
