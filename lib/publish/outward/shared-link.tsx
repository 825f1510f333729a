/** How a shared link looks elsewhere (Open Graph). */
import { chargerPath } from "../links.ts";
import { useSite } from "../pages/site-context.tsx";
import { chargerPicturePath, sitePicturePath, wholeAddress } from "./addresses.ts";
import { pictureHeight, pictureWidth } from "./picture-size.ts";

type Props = { readonly title: string; readonly description: string };

/** Title, words and picture of a page; nothing where the site does not state its address, since all of it needs whole addresses. */
export function SharedLink({ title, description }: Props) {
  const { index, here, place, invented, words } = useSite();
  const base = index.site.baseUrl;
  if (base === null) return null;
  const charger = index.chargers.find(({ id }) => chargerPath(id) === here);
  const shared = invented ? words.frame.inventedTitle(title) : title;
  // A charger's picture shows its verdict, which is also the description of its page.
  const picture =
    charger === undefined
      ? { path: sitePicturePath, alt: [index.site.title, index.site.tagline].filter((part) => part !== null).join(". ") }
      : { path: chargerPicturePath(charger.id), alt: `${shared}. ${description}` };
  return (
    <>
      <meta property="og:type" content={here === "" ? "website" : "article"} />
      <meta property="og:site_name" content={index.site.title} />
      <meta property="og:title" content={shared} />
      <meta property="og:description" content={description} />
      <meta property="og:url" content={wholeAddress(base, place)} />
      <meta property="og:image" content={wholeAddress(base, picture.path)} />
      <meta property="og:image:type" content="image/png" />
      <meta property="og:image:width" content={String(pictureWidth)} />
      <meta property="og:image:height" content={String(pictureHeight)} />
      <meta property="og:image:alt" content={picture.alt} />
    </>
  );
}
