package org.riseandgel.exercise;

/** A line of the working as a page shows it: "Liquid height", "h = V ÷ A", "200 mL ÷ 50.3 cm²", "3.98 cm". */
public record WorkingLine(String label, String formula, String numbers, String value) {}
