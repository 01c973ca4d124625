"use strict";
// Ticks of the shopping list stay after the page is closed, and count down. Nothing leaves the browser.
(() => {
  const boxes = [...document.querySelectorAll(".shop .ticks input")];
  const list = boxes.map((box) => box.closest("li").textContent.replace(/\s+/g, " ")).join("|");
  let sum = 0;
  for (const letter of list) {
    sum = (Math.imul(sum, 31) + letter.codePointAt(0)) | 0;
  }
  const key = "batchwright shopping " + sum;

  function kept() {
    try {
      return JSON.parse(localStorage.getItem(key) || "[]");
    } catch {
      return [];
    }
  }

  function keep() {
    try {
      localStorage.setItem(key, JSON.stringify(boxes.flatMap((box, i) => (box.checked ? [i] : []))));
    } catch {
      // without storage ticks last as long as the page
    }
  }

  function count() {
    for (const left of document.querySelectorAll(".left")) {
      const mine = [...left.closest(".shop").querySelectorAll(".tobuy .ticks input")];
      const open = mine.filter((box) => !box.checked).length;
      left.hidden = mine.length === 0;
      left.textContent = open === 0 ? "All is in the basket." : open + " of " + mine.length + " left to get";
    }
  }

  for (const i of kept()) {
    if (boxes[i]) {
      boxes[i].checked = true;
    }
  }
  document.addEventListener("change", () => {
    keep();
    count();
  });
  count();
})();
