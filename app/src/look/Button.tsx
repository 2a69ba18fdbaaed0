import type { ButtonHTMLAttributes } from 'react';
import './Button.css';

type Props = ButtonHTMLAttributes<HTMLButtonElement> & { readonly look?: 'plain' | 'strong' | 'quiet' };

/** A button that is always big enough for a thumb. */
export function Button({ look = 'plain', className = '', ...rest }: Props) {
  return <button type="button" className={`button ${look} ${className}`} {...rest} />;
}
