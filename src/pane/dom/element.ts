type Value = string | number | boolean | ((event: Event) => void);

/** What an element may be given: attributes by name, and listeners by "on" and their event ("onclick"). */
export type Attributes = Readonly<Record<string, Value>>;

/** A child: text stays text, whatever is in it. */
export type Child = Node | string | null;

/**
 * Makes an element of the page.
 *
 * @param attributes true sets an attribute without a value, false leaves it out
 * @param children null ones are left out
 */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  furnish(made, attributes);
  made.append(...children.filter((child) => child !== null));
  return made;
}

/** Makes an element of a drawing, as `element` does one of the page. */
export function svgElement<Tag extends keyof SVGElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: readonly Child[]
): SVGElementTagNameMap[Tag] {
  const made = document.createElementNS("http://www.w3.org/2000/svg", tag);
  furnish(made, attributes);
  made.append(...children.filter((child) => child !== null));
  return made;
}

function furnish(made: Element, attributes: Attributes): void {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") made.addEventListener(name.replace(/^on/, ""), value);
    else if (value !== false) made.setAttribute(name, value === true ? "" : String(value));
  }
}
