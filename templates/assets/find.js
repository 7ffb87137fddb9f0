// Narrows the list on the "Find" page while you type. Without script the whole list stands there.
(function () {
  var table = document.querySelector('#find-list table')
  if (!table) return
  var box = document.createElement('input')
  box.type = 'search'
  box.className = 'find-box'
  box.placeholder = 'Tag, name, place, fuse or cable'
  box.setAttribute('aria-label', 'Narrow the list')
  var count = document.createElement('span')
  count.className = 'find-count'
  count.setAttribute('role', 'status')
  var rows = Array.prototype.slice.call(table.tBodies[0].rows)
  var texts = rows.map(function (row) { return row.textContent.toLowerCase() })
  box.addEventListener('input', function () {
    var words = box.value.toLowerCase().split(/\s+/).filter(Boolean)
    var shown = 0
    rows.forEach(function (row, i) {
      var hit = words.every(function (word) { return texts[i].indexOf(word) !== -1 })
      row.hidden = !hit
      if (hit) shown++
    })
    count.textContent = words.length ? shown + ' of ' + rows.length : ''
  })
  var figure = document.getElementById('find-list')
  figure.parentNode.insertBefore(box, figure)
  figure.parentNode.insertBefore(count, figure)
  box.focus()
})()
