using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Loft.Kept.Coefficients;
using static WitherAdvisor.Store.Contract.Invented;

namespace WitherAdvisor.Store.Contract;

/// <summary>Sets that only ever grow, and which is adopted.</summary>
public abstract class CoefficientStoreTests<TStore> : StoreSuite<TStore>
    where TStore : IStoreUnderTest, new()
{
    private static readonly StoredCoefficientSet First = Filled<StoredCoefficientSet>() with { SiteId = "hill", Name = "first" };

    private static readonly StoredCoefficientSet Second = Sparse<StoredCoefficientSet>() with { SiteId = "hill", Name = "second", MadeAt = First.MadeAt.AddDays(1) };

    protected override async Task Prepare()
    {
        await Store.WithTrough();
        await Store.WithTrough("valley");
    }

    [Fact]
    public async Task A_set_comes_back_with_every_field()
    {
        Assert.Empty(await Store.Coefficients.List("hill", Cancel));
        Assert.True(await Store.Coefficients.Add(First, Cancel));
        Assert.True(await Store.Coefficients.Add(Second, Cancel));

        Assert.Equal(First, await Store.Coefficients.Find("hill", "first", Cancel));
        Assert.Equal(Second, await Store.Coefficients.Find("hill", "second", Cancel));
        Assert.Null(await Store.Coefficients.Find("valley", "first", Cancel));
        Assert.Equal([Second, First with { ReportJson = null }], await Store.Coefficients.List("hill", Cancel));
    }

    [Fact]
    public async Task A_name_that_is_taken_keeps_what_it_names()
    {
        await Store.Coefficients.Add(First, Cancel);

        Assert.False(await Store.Coefficients.Add(First with { SetJson = "{}" }, Cancel));

        Assert.Equal(First, await Store.Coefficients.Find("hill", "first", Cancel));
    }

    [Fact]
    public async Task The_set_adopted_last_holds_and_every_adoption_is_told_newest_first()
    {
        await Store.Coefficients.Add(First, Cancel);
        await Store.Coefficients.Add(Second, Cancel);
        Assert.Null(await Store.Coefficients.Adopted("hill", Cancel));
        // All of one instant: the order of keeping counts, not the clock.
        StoredAdoption adoption = Filled<StoredAdoption>() with { SiteId = "hill", SetName = "first" };

        await Store.Coefficients.Adopt(adoption, Cancel);
        Assert.Equal(First with { ReportJson = null }, await Store.Coefficients.Adopted("hill", Cancel));
        await Store.Coefficients.Adopt(adoption with { SetName = "second", AdoptedBy = null, Reason = null }, Cancel);
        Assert.Equal(Second, await Store.Coefficients.Adopted("hill", Cancel));
        await Store.Coefficients.Adopt(adoption with { SetName = null }, Cancel);
        Assert.Null(await Store.Coefficients.Adopted("hill", Cancel));

        await Store.Reopen();
        Assert.Equal(
            [adoption with { SetName = null }, adoption with { SetName = "second", AdoptedBy = null, Reason = null }, adoption],
            await Store.Coefficients.Adoptions("hill", Cancel));
        Assert.Empty(await Store.Coefficients.Adoptions("valley", Cancel));
        Assert.Null(await Store.Coefficients.Adopted("valley", Cancel));
    }

    [Fact]
    public async Task No_site_adopts_a_set_of_another_or_one_that_is_not_kept()
    {
        await Store.Coefficients.Add(First, Cancel);
        StoredAdoption adoption = Filled<StoredAdoption>();

        await Assert.ThrowsAsync<ParentNotFoundException>(() => Store.Coefficients.Adopt(adoption with { SiteId = "valley", SetName = "first" }, Cancel));
        await Assert.ThrowsAsync<ParentNotFoundException>(() => Store.Coefficients.Adopt(adoption with { SiteId = "hill", SetName = "none" }, Cancel));
        await Assert.ThrowsAsync<ParentNotFoundException>(() => Store.Coefficients.Adopt(adoption with { SiteId = "nowhere", SetName = null }, Cancel));
        await Assert.ThrowsAsync<ParentNotFoundException>(() => Store.Coefficients.Add(First with { SiteId = "nowhere" }, Cancel));

        Assert.Empty(await Store.Coefficients.Adoptions("hill", Cancel));
    }
}
