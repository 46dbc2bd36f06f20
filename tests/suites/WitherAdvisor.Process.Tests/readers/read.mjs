// Prints an exported log as JSON, an object a row; what a cell leaves empty is null. Usage: node read.mjs <file.csv|file.parquet>
import { readFile } from 'node:fs/promises'
import { parse } from 'csv-parse/sync'
import { parquetMetadata, parquetReadObjects } from 'hyparquet'

const path = process.argv[2]
const bytes = await readFile(path)
const plain = (_, value) => typeof value === 'bigint' ? Number(value) : value === undefined ? null : value
if (path.endsWith('.parquet')) {
  const file = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength)
  const metadata = parquetMetadata(file)
  const rows = await parquetReadObjects({ file, metadata })
  console.log(JSON.stringify({ groups: metadata.row_groups.length, rows }, plain))
} else {
  // Strict by RFC 4180: quotes only where they belong, as many cells in each row as in the header.
  const rows = parse(bytes, { columns: true, record_delimiter: '\r\n', cast: cell => cell === '' ? null : cell })
  console.log(JSON.stringify({ groups: 1, rows }, plain))
}
