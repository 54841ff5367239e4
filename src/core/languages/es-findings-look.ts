import type { FactsOf } from '../finding.ts';
import type { lookFindingsInEnglish } from './en-findings-look.ts';

const logoProblems: Readonly<Record<FactsOf['library/logo']['problem'], string>> = {
  missing: 'no está junto a library.yaml',
  format: 'no es una imagen PNG, JPEG o WebP',
  unreadable: 'no se puede abrir como imagen',
  'too large': 'es más grande de lo que puede ser una imagen',
};

/** El aspecto de una biblioteca: hallazgos sobre `library.yaml` y sus propias plantillas. */
export const lookFindingsInSpanish: typeof lookFindingsInEnglish = {
  'library/contrast': (f) =>
    `El color ${f.field} ${f.found} está a ${String(f.ratio)} : 1 del papel ${f.paper}; el texto necesita ${String(f.least)} : 1 para que todos puedan leerlo (WCAG 2.2, AA). ${f.nearest === '' ? 'Elija un papel más claro o más oscuro.' : `El más cercano que se puede leer es "${f.nearest}".`} Hasta entonces se usan los colores de siempre.`,
  'library/logo': (f) => `El logotipo "${f.file}" ${logoProblems[f.problem]}. Hasta que se arregle, las páginas no llevan logotipo.`,
  'library/logo-alt': (f) =>
    `El logotipo no tiene texto alternativo en ${f.languages.join(', ')}. Diga en cada idioma qué muestra, o escriba "decorative: true" si el nombre que está al lado ya lo dice todo. Hasta entonces, las páginas no llevan logotipo.`,
  'library/layout': (f) => `${layoutProblem(f)} Hasta que se arregle, se usa la parte de siempre (${f.part}).`,
};

function layoutProblem({ part, problem, detail }: FactsOf['library/layout']): string {
  switch (problem) {
    case 'missing':
      return `"layouts" nombra ${part}, y no hay ningún archivo layouts/${part}.tsx.`;
    case 'syntax':
      return `Esto no se puede leer como TSX: ${detail}.`;
    case 'import':
      return `"${detail}" no se puede importar aquí. Una plantilla puede importar "bookfellow/layouts" y nada más.`;
    case 'no function':
      return 'Este archivo no tiene "export default function" que haga de una página lo que va en ella.';
    case 'failed':
      return `La plantilla falla: ${detail}`;
    case 'refused':
      return `${detail} no puede estar en una plantilla: una página no tiene más guiones, estilos ni imágenes que los del sitio.`;
    case 'no heading':
      return `El comienzo de la primera página necesita un <h1>, y este tiene ${detail}.`;
    case 'link':
      return `El enlace "${detail}" no lleva a ninguna página del sitio. Hágalo con linkFrom(page.url, …).`;
  }
}
