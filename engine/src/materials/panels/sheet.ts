/** m of a sheet of plywood as it is sold, 4 ft by 8 ft. Common practice, no source: `materials.packs`. */
export const panelSheet = { width: 48 * 0.0254, length: 96 * 0.0254 } as const;
