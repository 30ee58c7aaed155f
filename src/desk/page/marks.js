// Small drawn signs, so that nothing is told by colour alone. In: a name. Out: an SVG element.

const PATHS = {
  // A bell, a knot, an eye, an open book: what each grade of remark asks for.
  'act-now': 'M12 3a5 5 0 0 1 5 5c0 5 2 6 2 8H5c0-2 2-3 2-8a5 5 0 0 1 5-5zM10 19a2 2 0 0 0 4 0z',
  'cannot-both': 'M4 7c6 0 10 10 16 10M4 17c6 0 10-10 16-10',
  'look-again': 'M2.5 12C6 6 18 6 21.5 12 18 18 6 18 2.5 12zM12 9.3a2.7 2.7 0 1 1 0 5.4 2.7 2.7 0 0 1 0-5.4z',
  'follow-guidance': 'M12 6.5C10 5 7 4.5 3.5 5v13c3.500-.5 6.500 0 8.500 1.500 2-1.500 5-2 8.500-1.500V5C17 4.500 14 5 12 6.500zM12 6.500v13',
};

export function sign(name) {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  svg.setAttribute('viewBox', '0 0 24 24');
  svg.setAttribute('class', `sign ${name}`);
  svg.setAttribute('aria-hidden', 'true');
  const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
  path.setAttribute('d', PATHS[name]);
  svg.append(path);
  return svg;
}
