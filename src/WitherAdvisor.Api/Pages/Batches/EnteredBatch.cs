using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Api.Pages.Batches;

/// <summary>A batch as a person entered it, with the air and rain stated beside it.</summary>
public sealed record EnteredBatch(StoredTrough Trough, Batch Batch, LoftAir Air);
