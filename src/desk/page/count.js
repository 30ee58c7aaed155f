// Beats counted by tapping. In: taps while a clock runs. Out: a count such as `36 in 15 s`.
import { el, say } from './words.js';

const SECONDS = [6, 15, 30, 60];

/** A counter; `done(count)` is called with each finished count. */
export function counter(done) {
  let seconds = 15;
  let beats = 0;
  let end = 0;
  let timer = 0;

  const big = el('button', { type: 'button', class: 'beat', onpointerdown: press, onkeydown: pressKey, onclick: clicked });
  const clock = el('span', { class: 'clock', role: 'timer' });
  const stop = el('button', { type: 'button', class: 'chip quiet', onclick: reset }, say('desk-count-stop'));
  const times = SECONDS.map((length) =>
    el('button', { type: 'button', class: 'chip', onclick: () => choose(length) }, say('desk-count-seconds', { seconds: length })),
  );
  const element = el(
    'div',
    { class: 'counter' },
    el('div', { class: 'chips', role: 'group', 'aria-label': say('desk-count-length') }, ...times),
    el('div', { class: 'counting' }, big, el('div', { class: 'count-side' }, clock, stop)),
  );

  function choose(length) {
    if (!timer) seconds = length;
    show();
  }
  // A finger counts when it comes down, not when it leaves; a click without one (a switch, a reader) counts as well.
  let pressed = false;
  function press(event) {
    if (event.button) return;
    pressed = true;
    beat();
  }
  function pressKey(event) {
    if (event.repeat && (event.key === ' ' || event.key === 'Enter')) event.preventDefault();
  }
  function clicked() {
    if (!pressed) beat();
    pressed = false;
  }
  function beat() {
    if (!timer) {
      beats = 0;
      end = performance.now() + seconds * 1000;
      timer = setInterval(tick, 100);
    } else {
      beats += 1;
    }
    show();
  }
  function tick() {
    if (performance.now() < end) {
      show();
      return;
    }
    const count = `${beats} in ${seconds} s`;
    const any = beats > 0;
    reset();
    if (any) done(count);
  }
  function reset() {
    clearInterval(timer);
    timer = 0;
    beats = 0;
    show();
  }
  function show() {
    times.forEach((button, at) => {
      button.setAttribute('aria-pressed', String(SECONDS[at] === seconds));
      button.disabled = Boolean(timer) && SECONDS[at] !== seconds;
    });
    big.textContent = timer ? String(beats) : say('desk-count-start');
    big.classList.toggle('running', Boolean(timer));
    big.setAttribute('aria-label', timer ? say('desk-count-tap', { count: beats }) : say('desk-count-start'));
    clock.textContent = timer ? say('desk-count-left', { seconds: Math.max(0, Math.ceil((end - performance.now()) / 1000)) }) : '';
    stop.hidden = !timer;
  }
  show();
  return { element, reset };
}
