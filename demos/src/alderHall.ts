export const alderHall = (): unknown => ({ schema: 1 });
