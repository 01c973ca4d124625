"use strict";
// A slider that moves asks anew. Two answers come by themselves: a quick one, marked, and then that of the whole search.
// What is shown never gives way to something older.
(() => {
  const form = document.getElementById("wish");
  const answer = document.getElementById("answer");
  const working = document.getElementById("working");
  const spoken = document.getElementById("spoken");
  let waiting = 0;
  const stamp = (part) => Number(part.querySelector(".shown")?.dataset.stamp ?? 0);

  document.querySelectorAll("input[data-moves]").forEach((range) => {
    const field = document.getElementById(range.dataset.moves);
    const follow = () => {
      if (!isNaN(Number(field.value))) {
        range.value = field.value === "" ? range.defaultValue : field.value;
      }
    };
    follow();
    range.hidden = false;
    range.addEventListener("input", () => { field.value = range.value; });
    field.addEventListener("input", follow);
  });

  const seat = () => document.querySelectorAll("details[data-of]").forEach((changes) => {
    changes.hidden = !form.querySelector(`input[name="eater"][value="${CSS.escape(changes.dataset.of)}"]`).checked;
  });
  seat();

  const ask = () => {
    answer.classList.add("stale");
    fetch("/desk", {
      method: "POST",
      body: new URLSearchParams(new FormData(form)),
      headers: { "X-Asked-By": "script", "X-Token": document.body.dataset.token },
    }).then((response) => {
      if (response.status === 422) {
        return response.text().then((text) => { working.textContent = text; answer.classList.remove("stale"); });
      }
      if (!response.ok) {
        working.textContent = "The page does not answer. Reload it.";
      }
      return null;
    }).catch(() => { working.textContent = "The program does not answer. Is it still running?"; });
  };

  form.addEventListener("input", () => {
    seat();
    clearTimeout(waiting);
    waiting = setTimeout(ask, 120);
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    clearTimeout(waiting);
    ask();
  });

  // Points to pick from, and what is found out only when somebody asks: both stand in the answer, which comes anew.
  const offer = () => answer.querySelectorAll("[data-picks]").forEach((picks) => { picks.hidden = false; });
  offer();
  answer.addEventListener("click", (event) => {
    const pick = event.target.closest("button[data-sets]");
    if (pick === null) {
      return;
    }
    pick.dataset.sets.split(" ").map((set) => set.split("=")).forEach(([id, value]) => {
      const field = document.getElementById(id);
      if (field !== null) {
        field.value = value;
        field.dispatchEvent(new Event("input", { bubbles: true }));
      }
    });
  });
  answer.addEventListener("submit", (event) => {
    const finds = event.target.closest("form[data-finds]");
    if (finds === null) {
      return;
    }
    event.preventDefault();
    fetch(finds.action, {
      method: "POST",
      body: new URLSearchParams(new FormData(finds)),
      headers: { "X-Asked-By": "script", "X-Token": document.body.dataset.token },
    }).then((response) => {
      if (!response.ok) {
        working.textContent = "Wait for the last answer, then ask again.";
      }
    }).catch(() => { working.textContent = "The program does not answer. Is it still running?"; });
  });

  const events = new EventSource("/desk/events");
  events.addEventListener("progress", (event) => { working.textContent = event.data; });
  events.addEventListener("answer", (event) => {
    if (Number(event.data) <= stamp(answer)) {
      return;
    }
    fetch("/desk/answer", { headers: { "X-Asked-By": "script" } })
      .then((response) => (response.ok ? response.text() : ""))
      .then((html) => {
        // Our own page, already escaped by the program that made it.
        const fresh = new DOMParser().parseFromString(html, "text/html");
        if (stamp(fresh) <= stamp(answer)) {
          return;
        }
        const held = answer.contains(document.activeElement) ? document.activeElement.textContent : null;
        answer.replaceChildren(...fresh.body.childNodes);
        if (held !== null) {
          [...answer.querySelectorAll("a, button, summary")].find((one) => one.textContent === held)?.focus();
        }
        answer.classList.remove("stale");
        offer();
        const says = answer.querySelector(".tiles dd strong, .big");
        if (says && !answer.querySelector(".checking")) {
          spoken.textContent = "Worked out: " + says.textContent;
        }
      });
  });
  window.addEventListener("pagehide", () => events.close());
})();
