// Shown to her. In: the exam. Out: its picture as large as the screen, turned to her, and what was found in the words of the page that
// goes home, in her language; no remark stands on it. From here the page goes to paper or to her phone.
import { ask } from './library.js';
import { asText, exam, isEmpty } from './exam.js';
import { isHeld, showHeld } from './hold.js';
import { settle } from './press.js';
import { el, lang, languages, say, tongue } from './words.js';
import { look } from './view.js';

const at = (id) => document.getElementById(id);
let address = '';

/** Wire it. */
export function prepareHer() {
  at('show-her').addEventListener('click', () => {
    settle();
    if (isHeld()) return showHeld();
    at('her-lang').replaceChildren(...languages().map(({ tag, name, signed }) => el('option', { value: tag, lang: tag }, signed ? name : say('desk-draft-language', { name }))));
    at('her-lang').value = at('page-lang').value || lang();
    // In a dark room it opens dark.
    showDark(document.documentElement.dataset.theme ? document.documentElement.dataset.theme === 'dark' : matchMedia('(prefers-color-scheme: dark)').matches);
    at('her').showModal();
    at('her-title').focus();
    draw();
    return undefined;
  });
  at('her-lang').addEventListener('change', () => {
    // Her page is printed in the language in which she was shown it.
    at('page-lang').value = at('her-lang').value === lang() ? '' : at('her-lang').value;
    draw();
  });
  at('her-dark').addEventListener('click', () => showDark(!at('her').classList.contains('dark')));
  at('her').addEventListener('close', () => {
    at('her-picture').removeAttribute('src');
    URL.revokeObjectURL(address);
  });
}

/** A page on a telephone is made for numbers to call; none of them is shown here. */
const NUMBERS = '[telephone]\nlabour-ward = "000"\nemergency = "000"\n';

/** What was found in words for her, as they stand over the picture of her page; nothing while there is no page for her. */
function told(own) {
  if (isEmpty()) return [];
  const { pages } = ask({ command: 'handout', exam: asText(), format: 'html', ...own, clinic: NUMBERS });
  if (!pages.length) return [];
  const page = new DOMParser().parseFromString(new TextDecoder().decode(pages[0]), 'text/html');
  const side = page.querySelector('.with-picture');
  const parts = [...(side?.children ?? [])];
  const over = parts.slice(0, parts.findIndex((part) => part.matches('.picture')));
  return over.flatMap((part) => [...part.querySelectorAll('p')]).map((line) => el('p', { class: line.className }, line.textContent));
}

/** As it is for whoever comes next. */
export function turnBack() {
  showDark(false);
}

function showDark(is) {
  at('her').classList.toggle('dark', is);
  at('her-dark').setAttribute('aria-pressed', String(is));
}

function draw() {
  const own = tongue(at('her-lang').value);
  const answer = isEmpty()
    ? ask({ command: 'outline', exam: asText(), lang: own.lang })
    : ask({ command: 'draw', exam: asText(), format: 'svg', ...look(), ...own, view: 'hers', labels: 'none', screen: true });
  at('her-said').replaceChildren(...(answer.pages.length ? told(own) : [el('p', {}, answer.why)]));
  at('her-said').lang = own.lang;
  if (!answer.pages.length) return;
  URL.revokeObjectURL(address);
  address = URL.createObjectURL(new Blob([answer.pages[0]], { type: 'image/svg+xml' }));
  at('her-picture').src = address;
  at('her-picture').alt = say('desk-her-alt', { value: exam.gestation ? say('desk-at-weeks', { value: exam.gestation.text }) : '' });
}
