return all(".strip__step").map(step => step.querySelector(".strip__kind").textContent);
