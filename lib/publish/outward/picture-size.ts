/** Size of the picture of a shared link, px: 1.91 to 1 at the size that services on the web ask for (common practice). */
export const pictureWidth = 1200;
export const pictureHeight = 630;
