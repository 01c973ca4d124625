"use strict";
// A slider that moves asks anew; the answer comes by itself, the last one asked for.
(() => {
  const form = document.getElementById("wish");
  const answer = document.getElementById("answer");
  const working = document.getElementById("working");
  const spoken = document.getElementById("spoken");
  let waiting = 0;
  let shown = Number(answer.dataset.shown);

  document.querySelectorAll("input[data-moves]").forEach((range) => {
    const field = document.getElementById(range.dataset.moves);
    const follow = () => {
      if (field.value !== "" && !isNaN(Number(field.value))) {
        range.value = field.value;
      }
    };
    follow();
    range.hidden = false;
    range.addEventListener("input", () => { field.value = range.value; });
    field.addEventListener("input", follow);
  });

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
    clearTimeout(waiting);
    waiting = setTimeout(ask, 120);
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    clearTimeout(waiting);
    ask();
  });

  const events = new EventSource("/desk/events");
  events.addEventListener("progress", (event) => { working.textContent = event.data; });
  events.addEventListener("answer", (event) => {
    const number = Number(event.data);
    if (number === shown) {
      return;
    }
    fetch("/desk/answer", { headers: { "X-Asked-By": "script" } })
      .then((response) => (response.ok ? response.text() : null))
      .then((html) => {
        if (html !== null) {
          // Our own page, already escaped by the program that made it.
          const fresh = new DOMParser().parseFromString(html, "text/html");
          answer.replaceChildren(...fresh.body.childNodes);
          answer.classList.remove("stale");
          shown = number;
          const says = answer.querySelector(".tiles dd strong, .big");
          spoken.textContent = says ? "Worked out: " + says.textContent : "";
        }
      });
  });
  window.addEventListener("pagehide", () => events.close());
})();
