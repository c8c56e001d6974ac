using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Storage.Mappings;

internal sealed class BoardCardMapping : IEntityTypeConfiguration<BoardCard>
{
    public void Configure(EntityTypeBuilder<BoardCard> builder)
    {
        builder.ToTable("board");
        builder.HasKey(c => c.JobNumber);
        builder.Property(c => c.JobNumber).ValueGeneratedNever();
        builder.HasOne<Job>().WithOne().HasForeignKey<BoardCard>(c => c.JobNumber).OnDelete(DeleteBehavior.Restrict);
        builder.Property(c => c.State).HasConversion<string>().HasMaxLength(20);
        builder.Property(c => c.WaitsFor).HasConversion<string>().HasMaxLength(20);
        builder.HasIndex(c => new { c.WaitsFor, c.Promised });
        builder.HasIndex(c => c.UnitKey);
        builder.HasIndex(c => c.ModelKey);
        builder.HasIndex(c => c.CustomerId);
    }
}
