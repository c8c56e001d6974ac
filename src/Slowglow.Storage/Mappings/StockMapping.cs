using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Stock;

namespace Slowglow.Storage.Mappings;

internal sealed class StockMapping : IEntityTypeConfiguration<StockItem>, IEntityTypeConfiguration<StockMove>
{
    public void Configure(EntityTypeBuilder<StockItem> builder)
    {
        builder.ToTable("stock");
        builder.HasKey(i => i.Id);
        builder.Property(i => i.Part).HasMaxLength(200);
        builder.Property(i => i.Bin).HasMaxLength(200);
        builder.Property(i => i.CostEach).HasPrecision(18, 4);
        builder.Property(i => i.MoveCount).IsConcurrencyToken();
        builder.Ignore(i => i.IsShort);
        builder.HasMany(i => i.Moves).WithOne().HasForeignKey(m => m.ItemId).OnDelete(DeleteBehavior.Restrict);
        builder.Navigation(i => i.Moves).HasField("moves").UsePropertyAccessMode(PropertyAccessMode.Field);
    }

    public void Configure(EntityTypeBuilder<StockMove> builder)
    {
        builder.ToTable("stock_moves");
        builder.HasKey(m => new { m.ItemId, m.Sequence });
        builder.Property(m => m.Sequence).ValueGeneratedNever();
        builder.Property(m => m.By).HasColumnName("written_by").HasMaxLength(80);
        builder.HasOne<Job>().WithMany().HasForeignKey(m => m.JobNumber).OnDelete(DeleteBehavior.Restrict);
    }
}
