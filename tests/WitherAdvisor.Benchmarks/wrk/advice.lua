-- Posts one advice request after another, and counts the answers that are not 200.
local file = assert(io.open(os.getenv("ADVICE_BODY"), "rb"))
wrk.method = "POST"
wrk.headers["Content-Type"] = "application/json"
wrk.body = file:read("*a")
file:close()

function done(summary, latency)
  io.write(string.format("p50 %.1f ms, p99 %.1f ms, %d answers in error\n",
    latency:percentile(50) / 1000, latency:percentile(99) / 1000,
    summary.errors.status + summary.errors.connect + summary.errors.read + summary.errors.write + summary.errors.timeout))
end
