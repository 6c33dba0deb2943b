import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Files dropped anywhere on the page, instead of the browser leaving the page for them. */
export class FileDrop implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #onFile: (file: File) => void;
  /** True while a file hovers over the page. */
  over = false;

  constructor(host: ReactiveControllerHost, onFile: (file: File) => void) {
    this.#host = host;
    this.#onFile = onFile;
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener('dragover', this.#onDragOver);
    window.addEventListener('dragleave', this.#onDragLeave);
    window.addEventListener('drop', this.#onDrop);
  }

  hostDisconnected(): void {
    window.removeEventListener('dragover', this.#onDragOver);
    window.removeEventListener('dragleave', this.#onDragLeave);
    window.removeEventListener('drop', this.#onDrop);
  }

  #onDragOver = (event: DragEvent): void => {
    if (!carriesFiles(event)) return;
    // What lies under the pointer may have a use for the file.
    this.#setOver(!event.defaultPrevented);
    event.preventDefault();
  };

  /** Without a target to go to, the pointer left the window. */
  #onDragLeave = (event: DragEvent): void => {
    if (event.relatedTarget === null) this.#setOver(false);
  };

  #onDrop = (event: DragEvent): void => {
    this.#setOver(false);
    if (!carriesFiles(event) || event.defaultPrevented) return;
    event.preventDefault();
    const [file] = event.dataTransfer?.files ?? [];
    if (file) this.#onFile(file);
  };

  #setOver(over: boolean): void {
    if (this.over === over) return;
    this.over = over;
    this.#host.requestUpdate();
  }
}

function carriesFiles(event: DragEvent): boolean {
  return event.dataTransfer?.types.includes('Files') ?? false;
}
