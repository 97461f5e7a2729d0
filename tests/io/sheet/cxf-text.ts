/** A CxF3 text of objects and specifications in its own words: made for tests, invented values. */
export const cxfText = (objects: string, specifications: string, uri = 'http://colorexchangeformat.com/CxF3-core') =>
  `<?xml version="1.0"?>\n<CxF xmlns="${uri}">\n<Resources>\n<ObjectCollection>\n${objects}\n</ObjectCollection>\n` +
  `<ColorSpecificationCollection>\n${specifications}\n</ColorSpecificationCollection>\n</Resources>\n</CxF>\n`;

export const cxfObject = (id: string, values: string, more = '') =>
  `<Object ObjectType="Standard" Name="Sample ${id}" Id="${id}"><CreationDate>2026-01-15T09:30:00Z</CreationDate>` +
  `<ColorValues>${values}</ColorValues>${more}</Object>`;

const ANGLE =
  '<SingleAngle><IlluminationAngle>45</IlluminationAngle><MeasurementAngle>0</MeasurementAngle></SingleAngle>';

interface Specified {
  readonly light?: string;
  readonly observer?: string;
  readonly type?: string;
  readonly geometry?: string;
  readonly range?: string;
  readonly device?: string;
}

export const cxfSpecification = (id: string, specified: Specified = {}) => {
  const {
    light = 'D50',
    observer = '2_Degree',
    type = 'Spectrum_Reflectance',
    geometry = ANGLE,
    range,
    device,
  } = specified;
  return (
    `<ColorSpecification Id="${id}"><TristimulusSpec><Illuminant>${light}</Illuminant><Observer>${observer}</Observer>` +
    `</TristimulusSpec><MeasurementSpec><MeasurementType>${type}</MeasurementType><GeometryChoice>${geometry}</GeometryChoice>` +
    `${range ?? '<WavelengthRange StartWL="400" Increment="100"/>'}${device ? `<Device>${device}</Device>` : ''}` +
    '</MeasurementSpec></ColorSpecification>'
  );
};

export const spectrum = (specification: string, values: string, more = '') =>
  `<ReflectanceSpectrum ColorSpecification="${specification}"${more}>${values}</ReflectanceSpectrum>`;

export const lab = (specification: string, l: number, a: number, b: number) =>
  `<ColorCIELab ColorSpecification="${specification}"><L>${l}</L><A>${a}</A><B>${b}</B></ColorCIELab>`;
