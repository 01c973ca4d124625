"use strict";
// Ticks are kept on this device first, each with a number, and sent once the program can be reached.
(() => {
  const without = document.getElementById("without");
  if (without) {
    if (without.dataset.working === "yes") {
      setTimeout(() => location.reload(), 1000);
    }
    return;
  }
  const list = document.getElementById("list");
  if (!list) {
    return;
  }
  const STORE = "batchwright.ticks";
  const AGAIN_MS = 4000;
  const sent = document.getElementById("sent");
  const spoken = document.getElementById("spoken");
  const sum = document.getElementById("left-sum");
  const basket = document.getElementById("basket");
  let sending = false;
  let timer = 0;

  const read = () => {
    try {
      return JSON.parse(localStorage.getItem(STORE)) || { next: 1, waiting: [] };
    } catch (broken) {
      return { next: 1, waiting: [] };
    }
  };
  const write = (ticks) => localStorage.setItem(STORE, JSON.stringify(ticks));

  const text = (minor) => {
    const digits = Number(list.dataset.digits);
    return (minor / 10 ** digits).toFixed(digits);
  };

  const show = (row, on) => {
    const box = row.querySelector("[role=checkbox]");
    if ((box.getAttribute("aria-checked") === "true") === on) {
      return false;
    }
    box.setAttribute("aria-checked", String(on));
    row.querySelector("input[name=on]").value = on ? "no" : "yes";
    const home = document.getElementById(on ? "taken" : row.dataset.home);
    const before = row.parentElement;
    home.append(row);
    [before, home].forEach((ul) => {
      const aisle = ul.closest(".aisle");
      if (aisle) {
        aisle.hidden = ul.children.length === 0;
      }
    });
    basket.hidden = document.getElementById("taken").children.length === 0;
    document.querySelectorAll(".shop").forEach((shop) => {
      shop.querySelector(".done").hidden = shop.querySelector(".ticks > li") !== null;
    });
    list.dataset.left = String(Number(list.dataset.left) + (on ? -1 : 1) * Number(row.dataset.minor));
    sum.textContent = text(Number(list.dataset.left));
    return true;
  };

  const waits = (count) => {
    sent.textContent = count === 0 ? "" : "Not connected: " + count + (count === 1 ? " tick waits" : " ticks wait")
      + " on this device, and will be sent by itself.";
  };

  const drop = (number) => {
    const ticks = read();
    ticks.waiting = ticks.waiting.filter((tick) => tick.number !== number);
    write(ticks);
    return ticks.waiting.length;
  };

  const later = () => {
    clearTimeout(timer);
    timer = setTimeout(send, AGAIN_MS);
  };

  const send = () => {
    const first = read().waiting[0];
    if (sending || !first) {
      return;
    }
    sending = true;
    fetch("/shop/tick", {
      method: "POST",
      body: new URLSearchParams(first),
      headers: { "X-Asked-By": "script", "X-Token": document.body.dataset.token },
    }).then((response) => {
      sending = false;
      if (response.ok) {
        if (drop(first.number) === 0) {
          waits(0);
        }
        send();
      } else if (response.status === 422) {
        drop(first.number);
        sent.textContent = "The list has changed. Reload the page.";
        send();
      } else if (response.status === 403 || response.status === 421) {
        sent.textContent = "The program was started anew. Open its address again: " + read().waiting.length + " ticks are kept here.";
      } else {
        later();
      }
    }).catch(() => {
      sending = false;
      waits(read().waiting.length);
      later();
    });
  };

  const byLine = (line) => document.getElementById("line-" + line);

  list.addEventListener("submit", (event) => {
    const form = event.target;
    if (!form.classList.contains("tick")) {
      return;
    }
    event.preventDefault();
    const row = form.closest("li");
    const on = form.elements.on.value === "yes";
    const next = row.nextElementSibling || row.previousElementSibling;
    const ticks = read();
    ticks.waiting.push({ number: ticks.next, plan: list.dataset.plan, line: row.dataset.line, on: on ? "yes" : "no" });
    ticks.next += 1;
    write(ticks);
    show(row, on);
    (next || row).querySelector("[role=checkbox]").focus({ preventScroll: true });
    spoken.textContent = row.dataset.name + (on ? " taken. " : " not taken. ") + sum.textContent + " " + list.dataset.currency + " left to pay.";
    send();
  });

  // What was ticked here and has not arrived yet holds, whatever the page says.
  read().waiting.filter((tick) => tick.plan === list.dataset.plan).forEach((tick) => {
    const row = byLine(tick.line);
    if (row) {
      show(row, tick.on === "yes");
    }
  });
  window.addEventListener("online", send);
  send();
})();
