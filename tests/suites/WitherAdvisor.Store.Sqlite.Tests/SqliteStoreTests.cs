using WitherAdvisor.Store.Contract;

namespace WitherAdvisor.Store.Sqlite.Tests;

// The store in SQLite keeps what every store has to. EnrolledTests sees that no suite of the contract is left out.
public sealed class SqliteBatchesTests : BatchStoreTests<TemporaryStore>;
public sealed class SqliteLotsTests : LotStoreTests<TemporaryStore>;

public sealed class SqliteCoefficientsTests : CoefficientStoreTests<TemporaryStore>;

public sealed class SqliteConcurrentUseTests : ConcurrentUseTests<TemporaryStore>;

public sealed class SqliteFedWeatherTests : FedWeatherTests<TemporaryStore>;

public sealed class SqliteFeedLogTests : FeedLogTests<TemporaryStore>;

public sealed class SqliteLastingTests : LastingTests<TemporaryStore>;

public sealed class SqliteOutcomesTests : OutcomeStoreTests<TemporaryStore>;

public sealed class SqliteRecalibrationsTests : RecalibrationStoreTests<TemporaryStore>;

public sealed class SqliteSitesTests : SiteStoreTests<TemporaryStore>;

public sealed class SqliteWeatherTests : WeatherStoreTests<TemporaryStore>;
