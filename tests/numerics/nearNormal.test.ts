import { it } from "vitest";
import { nearNormal } from "../../src/numerics/nearNormal";
import { near } from "../near";

// qnorm() and qt() of R 4.2.2 at 0.975, 0.995 and 0.9995. What the series leaves out falls with the fifth power of df.
it.each([
  { z: 1.9599639845400536, df: 20, t: 2.0859634472658648, relative: 2e-7 },
  { z: 1.9599639845400536, df: 50, t: 2.0085591121007607, relative: 2e-9 },
  { z: 1.9599639845400536, df: 200, t: 1.9718962236339079, relative: 2e-12 },
  { z: 2.5758293035488999, df: 20, t: 2.8453397097861082, relative: 1.5e-6 },
  { z: 2.5758293035488999, df: 50, t: 2.6777932709408439, relative: 1.5e-8 },
  { z: 2.5758293035488999, df: 200, t: 2.6006344361915481, relative: 1.5e-11 },
  { z: 3.2905267314919255, df: 20, t: 3.849516274930874, relative: 1.2e-5 },
  { z: 3.2905267314919255, df: 50, t: 3.4960128818111751, relative: 1.5e-7 },
  { z: 3.2905267314919255, df: 200, t: 3.3398354062757107, relative: 1.5e-10 },
])("lies near R's qt() for z = $z and $df degrees of freedom", ({ z, df, t, relative }) => {
  near("above", nearNormal(z, df), t, { relative });
  near("below", nearNormal(-z, df), -t, { relative });
});
