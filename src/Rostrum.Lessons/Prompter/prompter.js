// Moves the script past the reading line at the pace of speech. Where it is, is known as a passage and a share of it, so that
// letters may change their size, and the pace its number, without losing the place. No sign here would disturb a reader of XML.
(function () {
  "use strict";
  const root = document.documentElement;
  const script = document.getElementById("script");
  const passages = Array.from(script.querySelectorAll("[data-words]"));
  const firsts = Array.from(script.querySelectorAll("section"))
    .map(function (s) { return passages.indexOf(s.querySelector("[data-words]")); })
    .filter(function (i) { return i > -1; });
  const button = function (id) { return document.getElementById(id); };
  const wish = new URLSearchParams(window.location.search);
  const slowest = 60, fastest = 300, smallest = 0.5, largest = 2;
  // Where on the screen the presenter reads: a third from the top, near the lens.
  const readingLine = 0.35;

  let pace = between(Number(wish.get("pace")) || Number(script.dataset.pace), slowest, fastest);
  let size = between(Number(wish.get("size")) || 1, smallest, largest);
  let at = 0, share = 0, moved = -1, last = 0, isBegun = false, isRunning = false, hasKeys = true, lock = null;
  let inSteps = wish.has("steps") || window.matchMedia("(prefers-reduced-motion: reduce)").matches;

  function between(value, low, high) { return Math.max(low, Math.min(high, value)); }

  function seconds(i) { return Number(passages[i].dataset.words) * 60 / pace + Number(passages[i].dataset.hold || 0); }

  function topOf(i) {
    const box = passages[Math.min(i, passages.length - 1)].getBoundingClientRect();
    return window.scrollY + (i > passages.length - 1 ? box.bottom : box.top);
  }

  // In steps a passage stands still and moves on at once; one that is longer than half of the screen moves in several.
  function shareShown(top, next) {
    if (!inSteps) { return share; }
    const steps = Math.max(1, Math.ceil((next - top) / (window.innerHeight / 2)));
    return Math.floor(share * steps) / steps;
  }

  // Before the first start the head of the script stands still, whatever is done to the letters.
  function place() {
    if (!isBegun) { return; }
    const top = topOf(at), next = topOf(at + 1);
    const wanted = Math.max(0, top + shareShown(top, next) * (next - top) - window.innerHeight * readingLine);
    const whole = Math.floor(wanted);
    window.scrollTo(0, whole);
    moved = window.scrollY;
    // The part of a dot that no browser scrolls, so that slow letters glide.
    script.style.setProperty("--nudge", inSteps ? "0px" : (whole - wanted).toFixed(2) + "px");
  }

  function find() {
    const line = window.scrollY + window.innerHeight * readingLine;
    at = Math.max(0, passages.findLastIndex(function (p, i) { return line >= topOf(i); }));
    share = between((line - topOf(at)) / Math.max(1, topOf(at + 1) - topOf(at)), 0, 1);
    tell();
  }

  function clock(time) {
    const whole = Math.round(time);
    return Math.floor(whole / 60) + ":" + String(whole % 60).padStart(2, "0");
  }

  function tell() {
    let left = seconds(at) * (1 - share);
    for (let i = at + 1; passages.length > i; i++) { left += seconds(i); }
    const here = passages[at].closest("section").querySelector("h2");
    button("topic").textContent = here.firstChild.textContent;
    button("left").textContent = clock(left) + " left";
    button("pace").textContent = pace + " words a minute";
  }

  function tick(now) {
    if (!isRunning) { return; }
    let rest = Math.min(1, (now - last) / 1000);
    last = now;
    while (rest > 0) {
      const need = seconds(at) * (1 - share);
      if (need > rest) {
        share += rest / seconds(at);
        rest = 0;
      } else if (at + 1 > passages.length - 1) {
        share = 1;
        rest = 0;
        run(false);
      } else {
        rest -= need;
        at += 1;
        share = 0;
      }
    }
    place();
    tell();
    window.requestAnimationFrame(tick);
  }

  function run(wanted) {
    isRunning = wanted;
    root.classList.toggle("running", isRunning);
    press("run", isRunning);
    button("run").textContent = isRunning ? "Stop" : "Start";
    keepAwake();
    if (isRunning) {
      isBegun = true;
      last = window.performance.now();
      window.requestAnimationFrame(tick);
    }
  }

  // A screen that goes dark in the middle of a take; where a browser cannot prevent it, nothing is lost.
  function keepAwake() {
    if (!isRunning) {
      if (lock) { lock.release(); lock = null; }
      return;
    }
    if (navigator.wakeLock) {
      navigator.wakeLock.request("screen").then(function (held) { lock = held; }, function () { lock = null; });
    }
  }

  function press(id, isOn) { button(id).setAttribute("aria-pressed", String(isOn)); }

  function flip(id, name) {
    press(id, root.classList.toggle(name));
    place();
  }

  function setPace(wanted) { pace = between(wanted, slowest, fastest); tell(); }

  function setSize(wanted) {
    size = between(wanted, smallest, largest);
    root.style.setProperty("--times", String(size));
    place();
  }

  function jump(to) { isBegun = true; at = between(to, 0, passages.length - 1); share = 0; place(); tell(); }

  function jumpTopic(by) {
    const here = at + (share > 0.1 ? 0.5 : 0);
    const found = by > 0 ? firsts.find(function (i) { return i > here; }) : firsts.findLast(function (i) { return here > i; });
    jump(found === undefined ? (by > 0 ? at : 0) : found);
  }

  function steps(isOn) { inSteps = isOn; press("steps", isOn); place(); }

  const letters = {
    m: function () { flip("mirror", "mirror"); },
    l: function () { flip("light", "light"); },
    "+": function () { setSize(size + 0.1); },
    "=": function () { setSize(size + 0.1); },
    "-": function () { setSize(size - 0.1); },
    "−": function () { setSize(size - 0.1); }
  };

  const keys = {
    " ": function () { run(!isRunning); },
    ArrowLeft: function () { setPace(pace - 5); },
    ArrowRight: function () { setPace(pace + 5); },
    ArrowUp: function () { jump(share > 0.1 ? at : at - 1); },
    ArrowDown: function () { jump(at + 1); },
    PageUp: function () { jumpTopic(-1); },
    PageDown: function () { jumpTopic(1); },
    Home: function () { window.scrollTo(0, 0); at = 0; share = 0; isBegun = false; tell(); }
  };

  document.addEventListener("keydown", function (event) {
    if (event.ctrlKey || event.metaKey || event.altKey) { return; }
    // A button that has the focus is pressed by the blank itself.
    if (event.key === " ") { if (event.target.tagName === "BUTTON") { return; } }
    const act = keys[event.key] || (hasKeys ? letters[event.key.toLowerCase()] : null);
    if (act) { event.preventDefault(); act(); }
  });

  button("run").addEventListener("click", function () { run(!isRunning); });
  button("slower").addEventListener("click", keys.ArrowLeft);
  button("faster").addEventListener("click", keys.ArrowRight);
  button("smaller").addEventListener("click", letters["-"]);
  button("larger").addEventListener("click", letters["+"]);
  button("mirror").addEventListener("click", letters.m);
  button("light").addEventListener("click", letters.l);
  button("steps").addEventListener("click", function () { steps(!inSteps); });
  button("keys").addEventListener("click", function () { hasKeys = !hasKeys; press("keys", hasKeys); });

  // On a screen without keys a tap on the words does what the blank does; who marks words with the pointer wants to copy them.
  script.addEventListener("click", function () { if (String(window.getSelection()) === "") { run(!isRunning); } });

  // Whoever scrolls by hand goes on from there.
  window.addEventListener("scroll", function () { if (Math.abs(window.scrollY - moved) > 2) { moved = -1; isBegun = true; find(); } }, { passive: true });
  window.addEventListener("resize", place);

  if (passages.length === 0) { return; }
  document.querySelectorAll(".status, .mark, .bar").forEach(function (part) { part.hidden = false; });
  if (wish.has("mirror")) { press("mirror", root.classList.toggle("mirror", true)); }
  if (wish.has("light")) { press("light", root.classList.toggle("light", true)); }
  press("steps", inSteps);
  press("keys", true);
  root.style.setProperty("--times", String(size));
  find();
}());
