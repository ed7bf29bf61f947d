import Link from 'next/link';
import styles from './button.module.css';

type Weight = 'plain' | 'main' | 'alarm' | 'bare';

/** Class names for anything that must look like a button. */
export function buttonClass(weight: Weight = 'plain'): string {
  return weight === 'plain' ? (styles.button ?? '') : `${styles.button} ${styles[weight]}`;
}

export function Button({
  weight = 'plain',
  className = '',
  ...rest
}: React.ComponentProps<'button'> & { weight?: Weight }) {
  return <button type="button" className={`${buttonClass(weight)} ${className}`} {...rest} />;
}

export function ButtonLink({
  weight = 'plain',
  ...rest
}: React.ComponentProps<typeof Link> & { weight?: Weight }) {
  return <Link className={buttonClass(weight)} {...rest} />;
}
