using WitherAdvisor.Store.Contract;

namespace WitherAdvisor.Store.Sqlite.Tests;

public sealed class EnrolledTests
{
    [Fact]
    public void Every_suite_of_the_contract_is_run() => Assert.Empty(StoreSuites.NotRunBy(typeof(EnrolledTests).Assembly));

    [Fact]
    public void A_suite_that_nobody_runs_is_found() =>
        Assert.Equal(StoreSuites.All.Select(suite => suite.Name), StoreSuites.NotRunBy(typeof(IStoreUnderTest).Assembly));
}
