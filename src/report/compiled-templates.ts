/**
 * Templates compiled before, by the SHA-256 of their text. In the source there are none: `npm run build` puts those of
 * templates/ in the place of this file. A template with another text is compiled when it is opened, to the same.
 */
export const compiledTemplates: Readonly<Record<string, TemplateSpecification>> = {};
