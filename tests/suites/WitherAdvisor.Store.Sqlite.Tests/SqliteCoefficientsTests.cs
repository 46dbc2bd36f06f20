using Microsoft.Data.Sqlite;
using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Loft.Kept.Coefficients;
using static WitherAdvisor.Store.Sqlite.Tests.Invented;
using static WitherAdvisor.Store.Sqlite.Tests.TemporaryStore;

namespace WitherAdvisor.Store.Sqlite.Tests;

public sealed class SqliteCoefficientsTests : IAsyncLifetime
{
    private static readonly StoredCoefficientSet First = Filled<StoredCoefficientSet>() with { SiteId = "hill", Name = "first" };

    private static readonly StoredCoefficientSet Second = Sparse<StoredCoefficientSet>() with { SiteId = "hill", Name = "second", MadeAt = First.MadeAt.AddDays(1) };

    private readonly TemporaryStore store = new();

    public async ValueTask InitializeAsync()
    {
        await store.WithTrough();
        await store.WithTrough("valley");
    }

    [Fact]
    public async Task A_set_comes_back_with_every_field()
    {
        Assert.Empty(await store.Coefficients.List("hill", Cancel));
        Assert.True(await store.Coefficients.Add(First, Cancel));
        Assert.True(await store.Coefficients.Add(Second, Cancel));

        Assert.Equal(First, await store.Coefficients.Find("hill", "first", Cancel));
        Assert.Equal(Second, await store.Coefficients.Find("hill", "second", Cancel));
        Assert.Null(await store.Coefficients.Find("valley", "first", Cancel));
        Assert.Equal([Second, First with { ReportJson = null }], await store.Coefficients.List("hill", Cancel));
    }

    [Fact]
    public async Task A_name_that_is_taken_keeps_what_it_names()
    {
        await store.Coefficients.Add(First, Cancel);

        Assert.False(await store.Coefficients.Add(First with { SetJson = "{}" }, Cancel));

        Assert.Equal(First, await store.Coefficients.Find("hill", "first", Cancel));
    }

    [Theory]
    [InlineData("UPDATE CoefficientSet SET SetJson = '{}'")]
    [InlineData("DELETE FROM CoefficientSet")]
    public async Task The_file_itself_refuses_to_change_or_drop_a_set(string sql)
    {
        await store.Coefficients.Add(First, Cancel);

        Assert.Throws<SqliteException>(() => store.Column(sql));

        Assert.Equal(First, await store.Coefficients.Find("hill", "first", Cancel));
    }

    [Fact]
    public async Task The_set_adopted_last_holds_and_every_adoption_is_told_newest_first()
    {
        await store.Coefficients.Add(First, Cancel);
        await store.Coefficients.Add(Second, Cancel);
        Assert.Null(await store.Coefficients.Adopted("hill", Cancel));
        // All of one instant: the order of keeping counts, not the clock.
        StoredAdoption adoption = Filled<StoredAdoption>() with { SiteId = "hill", SetName = "first" };

        await store.Coefficients.Adopt(adoption, Cancel);
        Assert.Equal(First with { ReportJson = null }, await store.Coefficients.Adopted("hill", Cancel));
        await store.Coefficients.Adopt(adoption with { SetName = "second", AdoptedBy = null, Reason = null }, Cancel);
        Assert.Equal(Second, await store.Coefficients.Adopted("hill", Cancel));
        await store.Coefficients.Adopt(adoption with { SetName = null }, Cancel);
        Assert.Null(await store.Coefficients.Adopted("hill", Cancel));

        store.Reopen();
        Assert.Equal(
            [adoption with { SetName = null }, adoption with { SetName = "second", AdoptedBy = null, Reason = null }, adoption],
            await store.Coefficients.Adoptions("hill", Cancel));
        Assert.Empty(await store.Coefficients.Adoptions("valley", Cancel));
        Assert.Null(await store.Coefficients.Adopted("valley", Cancel));
    }

    [Fact]
    public async Task No_site_adopts_a_set_of_another_or_one_that_is_not_kept()
    {
        await store.Coefficients.Add(First, Cancel);
        StoredAdoption adoption = Filled<StoredAdoption>();

        await Assert.ThrowsAsync<ParentNotFoundException>(() => store.Coefficients.Adopt(adoption with { SiteId = "valley", SetName = "first" }, Cancel));
        await Assert.ThrowsAsync<ParentNotFoundException>(() => store.Coefficients.Adopt(adoption with { SiteId = "hill", SetName = "none" }, Cancel));
        await Assert.ThrowsAsync<ParentNotFoundException>(() => store.Coefficients.Adopt(adoption with { SiteId = "nowhere", SetName = null }, Cancel));
        await Assert.ThrowsAsync<ParentNotFoundException>(() => store.Coefficients.Add(First with { SiteId = "nowhere" }, Cancel));

        Assert.Empty(await store.Coefficients.Adoptions("hill", Cancel));
    }

    public ValueTask DisposeAsync()
    {
        store.Dispose();
        return ValueTask.CompletedTask;
    }
}
