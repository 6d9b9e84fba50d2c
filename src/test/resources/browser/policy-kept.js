return window.__witness.violations.concat(window.__witness.errors);
