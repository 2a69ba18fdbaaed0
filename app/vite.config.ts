import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { workersInBuild } from './workersInBuild.ts';

export default defineConfig({
  build: {
    target: 'es2023',
    modulePreload: {
      polyfill: false,
      // A worker has no page to put links into.
      resolveDependencies: (_file, needed, { hostType }) => (hostType === 'html' ? needed : []),
    },
    assetsInlineLimit: 0,
    // One sheet of styles, so that the screens fetched later never stand bare. `layers.css` comes first and orders it.
    cssCodeSplit: false,
  },
  worker: { format: 'es' },
  plugins: [
    react(),
    workersInBuild('plan.worker'),
    VitePWA({
      // A new version waits until somebody taps for it: code is never swapped under a running page.
      registerType: 'prompt',
      injectRegister: null,
      includeAssets: ['icon.svg', 'icon-192.png', 'icon-512.png'],
      workbox: {
        globPatterns: ['**/*.{html,js,css,svg,png,json,ttf,webmanifest}'],
        clientsClaim: true,
        maximumFileSizeToCacheInBytes: 8_000_000,
        // The solver is fetched by whoever first needs it, and kept from then on.
        runtimeCaching: [
          {
            urlPattern: /\.wasm$/,
            handler: 'CacheFirst',
            options: { cacheName: 'solver', expiration: { maxEntries: 2 } },
          },
        ],
      },
      manifest: {
        id: '/',
        name: 'Kneewall',
        short_name: 'Kneewall',
        description: 'Plan, build and prove a ducted heat pump in a small house.',
        display: 'standalone',
        start_url: '/',
        background_color: '#f6f2e8',
        theme_color: '#23303a',
        icons: [
          { src: '/icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: '/icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: '/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
          { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml' },
        ],
      },
    }),
  ],
});
