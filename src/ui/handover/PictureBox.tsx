interface PictureBoxProps {
  readonly picture: string | null;
  readonly alt: string;
  /** Stands in the place of a picture that is not there. */
  readonly missing: string;
}

/** A picture as large as the place it has; its proportions stay. */
export function PictureBox({ picture, alt, missing }: PictureBoxProps) {
  if (picture === null) return <p className="picture-missing">{missing}</p>;
  return <img className="picture-box" src={picture} alt={alt} />;
}
