using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Slowglow.Workshop.Units;

namespace Slowglow.Storage.Mappings;

internal sealed class DrawnSheetMapping : IEntityTypeConfiguration<DrawnSheet>
{
    public void Configure(EntityTypeBuilder<DrawnSheet> builder)
    {
        builder.ToTable("sheets");
        builder.HasKey(s => s.Id);
        builder.Property(s => s.Title).HasMaxLength(200);
    }
}
