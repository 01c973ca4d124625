"use strict";
// One step at a time, timers that ring, a screen that stays on: all of it on this device, so that it goes on without a connection.
(() => {
  const stove = document.getElementById("stove");
  const list = document.getElementById("steps");
  if (!stove || !list) {
    return;
  }
  const STORE = "batchwright.stove";
  const MINUTE = 60000;
  const steps = Array.from(list.children);
  const go = document.getElementById("go");
  const back = document.getElementById("back");
  const forth = document.getElementById("forth");
  const next = document.getElementById("next");
  const end = document.getElementById("end");
  const awake = document.getElementById("awake");
  const alarm = document.getElementById("alarm");
  const shown = document.getElementById("timers");
  const filled = Number(stove.dataset.filled);

  // at: the step; since: when it was begun; timers: name, until, rung
  const fresh = () => ({ key: stove.dataset.key, at: -1, since: 0, timers: [], next: 1 });
  const read = () => {
    try {
      const kept = JSON.parse(localStorage.getItem(STORE));
      return kept && kept.key === stove.dataset.key ? kept : fresh();
    } catch (broken) {
      return fresh();
    }
  };
  let state = read();
  const keep = () => localStorage.setItem(STORE, JSON.stringify(state));

  // ---- the screen
  let lock = null;
  const stayOn = () => {
    if (!("wakeLock" in navigator)) {
      awake.textContent = "This browser cannot keep the screen on here: let the device wait longer before it goes dark.";
      return;
    }
    if (lock && !lock.released) {
      return;
    }
    navigator.wakeLock.request("screen").then((held) => {
      lock = held;
      awake.textContent = "The screen stays on while this page is open.";
      held.addEventListener("release", () => { awake.textContent = "The screen may go dark."; });
    }).catch(() => { awake.textContent = "The screen may go dark: this device does not let the page keep it on."; });
  };
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible" && state.at >= 0) {
      stayOn();
    }
  });

  // ---- the sound: browsers allow it only after a tap
  let audio = null;
  const unmute = () => {
    const Audio = window.AudioContext || window.webkitAudioContext;
    if (!audio && Audio) {
      audio = new Audio();
    }
    if (audio && audio.state === "suspended") {
      audio.resume().catch(() => {});
    }
  };
  document.addEventListener("click", unmute);
  const beep = () => {
    if (!audio || audio.state !== "running") {
      return;
    }
    [0, 0.25, 0.5].forEach((after) => {
      const tone = audio.createOscillator();
      const loud = audio.createGain();
      const from = audio.currentTime + after;
      tone.frequency.value = 880;
      loud.gain.setValueAtTime(0.0001, from);
      loud.gain.exponentialRampToValueAtTime(0.5, from + 0.02);
      loud.gain.exponentialRampToValueAtTime(0.0001, from + 0.2);
      tone.connect(loud).connect(audio.destination);
      tone.start(from);
      tone.stop(from + 0.22);
    });
  };

  // ---- steps
  const clock = (ms) => new Date(ms).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
  const length = (minutes) => (minutes < 60 ? "" : Math.floor(minutes / 60) + " h ") + (minutes % 60) + " min";
  const number = (step, name) => Number(step.dataset[name]);

  // From the step that goes on now; who takes longer than planned moves the end.
  const tellEnd = () => {
    if (state.at < 0) {
      end.innerText = "If you begin now, all is filled at ";
      end.append(strong(clock(Date.now() + filled * MINUTE)));
      return;
    }
    if (state.at >= steps.length) {
      end.innerText = "All steps are done.";
      return;
    }
    const step = steps[state.at];
    const left = Math.max(0, filled - number(step, "start")) * MINUTE;
    const least = Math.max(0, filled - number(step, "start") - number(step, "minutes")) * MINUTE;
    end.innerText = "All is filled at about ";
    end.append(strong(clock(Math.max(state.since + left, Date.now() + least))));
  };
  const strong = (text) => {
    const bold = document.createElement("strong");
    bold.textContent = text;
    return bold;
  };

  const show = (focus) => {
    steps.forEach((step, i) => { step.hidden = i !== Math.max(0, state.at); });
    const done = state.at >= steps.length;
    if (done) {
      steps.forEach((step) => { step.hidden = true; });
    }
    back.disabled = state.at < 0;
    forth.hidden = done;
    forth.textContent = state.at < 0 ? "Begin" : state.at === steps.length - 1 ? "Done, that was all" : "Done, next step";
    const coming = state.at < 0 ? null : steps[state.at + 1];
    next.textContent = coming ? "Next: " + coming.dataset.title + ". " + coming.dataset.do
      : state.at < 0 ? steps.length + " steps, " + length(filled) + " until all is filled." : "";
    tellEnd();
    if (focus) {
      (done ? document.getElementById("fill-h") : steps[Math.max(0, state.at)]).focus();
    }
  };

  const to = (at) => {
    state.at = at;
    state.since = Date.now();
    keep();
    stayOn();
    show(true);
  };
  forth.addEventListener("click", () => to(state.at + 1));
  back.addEventListener("click", () => to(state.at - 1));

  // ---- timers
  const button = (label, name, does) => {
    const made = document.createElement("button");
    made.type = "button";
    made.textContent = label;
    made.setAttribute("aria-label", label + ": " + name);
    made.addEventListener("click", does);
    return made;
  };

  const draw = () => {
    shown.replaceChildren(...state.timers.map((timer) => {
      const row = document.createElement("li");
      row.dataset.number = timer.number;
      const name = document.createElement("span");
      name.className = "name";
      name.textContent = timer.name;
      const rest = document.createElement("span");
      rest.className = "rest";
      row.append(name, rest,
        button("+1 min", timer.name, () => { timer.until = Math.max(timer.until, Date.now()) + MINUTE; timer.rung = false; keep(); tick(); }),
        button("Stop", timer.name, () => { state.timers = state.timers.filter((other) => other !== timer); keep(); draw(); tick(); forth.focus(); }));
      return row;
    }));
  };

  let beeped = 0;
  const tick = () => {
    let rings = false;
    state.timers.forEach((timer) => {
      const row = shown.querySelector("[data-number='" + timer.number + "']");
      const rest = Math.ceil((timer.until - Date.now()) / 1000);
      const over = rest <= 0;
      row.classList.toggle("over", over);
      row.querySelector(".rest").textContent = over ? "Time is up"
        : Math.floor(rest / 60) + ":" + String(rest % 60).padStart(2, "0");
      rings = rings || over;
      if (over && !timer.rung) {
        timer.rung = true;
        keep();
        alarm.textContent = "Time is up. " + timer.name;
      }
    });
    document.body.classList.toggle("rings", rings);
    document.title = (rings ? "Time is up – " : "") + document.title.replace("Time is up – ", "");
    if (rings && Date.now() - beeped > 1500) {
      beeped = Date.now();
      beep();
    }
    if (!rings) {
      alarm.textContent = "";
    }
  };

  steps.forEach((step) => {
    const ring = step.querySelector(".ring");
    ring.hidden = false;
    ring.addEventListener("click", () => {
      unmute();
      stayOn();
      state.timers.push({ number: state.next, name: step.dataset.timer, until: Date.now() + number(step, "minutes") * MINUTE, rung: false });
      state.next += 1;
      keep();
      draw();
      tick();
    });
  });

  stove.classList.add("by-step");
  document.getElementById("fill-h").tabIndex = -1;
  go.hidden = false;
  show(false);
  draw();
  setInterval(tick, 250);
  setInterval(tellEnd, 15000);
  tick();
})();
