// Stands in the bundle for parts of packages that are never reached, because they cost time at every start: WOFF2 decompression (our fonts
// are OTF and TTF files) and source maps (templates have none; Handlebars falls back on its own when they are absent).
export default function absent() {
  throw new Error('this part of a package is left out of the bundle');
}
