/** Whether the program is kept for use without a network, and what is known of a newer one. */
export interface OfflineState {
  /** `never`: not in this browser, or not by this address. */
  readonly offline: 'never' | 'coming' | 'works';
  /** It was kept while the page was open. */
  readonly isNewlyOffline: boolean;
  /** Goes over to the newer version and loads the page again; null while there is none. */
  readonly update: (() => void) | null;
  /** The newer version was put off: nothing asks again. */
  readonly isUpdateLater: boolean;
}

export const OFFLINE_AT_START: OfflineState = {
  offline: 'never',
  isNewlyOffline: false,
  update: null,
  isUpdateLater: false,
};
